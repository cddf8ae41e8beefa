import type { Route } from 'next';
import Link from 'next/link';
import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { askNext } from '@/lib/analysis/next-question/next-question';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { NextOverview } from '@/lib/ui/insight/next-overview';
import { NextPartView } from '@/lib/ui/insight/next-part-view';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadQuestion } from '../load-question';

type Props = { readonly actor: Actor; readonly site: string | undefined; readonly mix: string | undefined };

/** For a coordinator: every site, or the one asked for. */
export async function AllNext({ actor, site, mix }: Props) {
  const { known } = await loadQuestion(Promise.resolve({}), askNext);
  const t = await getTranslations('insight');
  if (!known) {
    return (
      <>
        <Heading text={t('next.allHeading')} />
        <EmptyState text={t('fit.empty')} />
      </>
    );
  }
  const { scope, answer } = known;
  const words = await insightWords(actor, scope);
  if (site === undefined) {
    return (
      <>
        <Heading text={t('next.allHeading')} />
        <FittedBlock answer={answer} timeZone={actor.networkTimeZone}>
          {(result) => <NextOverview answer={result} words={words} />}
        </FittedBlock>
      </>
    );
  }
  if (!scope.choices.sites.some(({ id }) => id === site)) return <NotThere />;
  return (
    <>
      <Heading text={t('next.heading', { site: words.names.siteName(site) })} />
      <FittedBlock answer={answer} timeZone={actor.networkTimeZone}>
        {(result) => {
          const part = result.sites.find(({ siteId }) => siteId === site);
          return part ? (
            <NextPartView part={part} mix={mix} reader={actor} words={words} />
          ) : (
            <EmptyState text={t('next.noMix', { site: words.names.siteName(site) })} />
          );
        }}
      </FittedBlock>
      <p className="no-print">
        <Link href={'/questions/next' as Route}>{t('next.allLink')}</Link>
      </p>
    </>
  );
}
