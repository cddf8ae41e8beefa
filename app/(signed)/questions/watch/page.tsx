import type { Route } from 'next';
import { after } from 'next/server';
import { getLocale, getTranslations } from 'next-intl/server';
import { Suspense } from 'react';
import { requireActor } from '@/lib/access/current';
import { watchPeriod } from '@/lib/analysis/watch-question/watch-period.input';
import { watch } from '@/lib/analysis/watch-question/watch-question';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Notice } from '@/lib/ui/page/notice';
import { PeriodChips } from '@/lib/ui/watch/period-chips';
import { Listed, ListedWhenFitted } from './listed';

export default async function WatchPage({ searchParams }: PageProps<'/questions/watch'>) {
  const { saved, days: asked } = await searchParams;
  const actor = await requireActor('coordinator');
  const days = watchPeriod(asked);
  const watched = await watch(actor, new Date(), days);
  const t = await getTranslations('watch.watch');
  const insight = await getTranslations('insight');
  if (!watched)
    return (
      <>
        <Heading text={t('heading')} />
        <EmptyState text={insight('fit.empty')} />
      </>
    );
  const { fitted, latestOnly } = watched;
  // The work goes on when the reader has left, so that the next one finds it done.
  if (fitted.kind !== 'current') after(() => fitted.next);
  return (
    <>
      <Heading text={t('heading')} />
      {saved === 'answer' ? <Notice>{t('saved')}</Notice> : null}
      <PeriodChips chosen={days} />
      {fitted.kind === 'first' ? (
        <Suspense
          fallback={
            <>
              <p role="status">{t('plainOnly')}</p>
              <Listed actor={actor} watched={watched} />
            </>
          }
        >
          <ListedWhenFitted actor={actor} watched={watched} next={fitted.next} />
        </Suspense>
      ) : (
        <>
          <Listed actor={actor} watched={watched} answers={fitted.stored.result} />
          <p className="quiet">
            {insight(fitted.kind === 'current' ? 'fit.fittedAt' : 'fit.earlier', {
              when: formatInstant(new Date(fitted.stored.fittedAt), actor.networkTimeZone, await getLocale()),
            })}
          </p>
        </>
      )}
      {latestOnly === undefined ? null : <p className="quiet">{t('latestRecords', { most: latestOnly })}</p>}
      <p className="quiet">{t('note', { units: insight(`unit.${watched.scope.filter.container}`) })}</p>
      <p className="quiet no-print">
        <Link href={'/account/digest' as Route}>{t('digestNote')}</Link>
      </p>
    </>
  );
}
