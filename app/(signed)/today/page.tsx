import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listDue } from '@/lib/records/today/list-due.query';
import { formatDateWithWeekday } from '@/lib/ui/format/date-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { DueList } from '@/lib/ui/today/due-list';

export default async function TodayPage() {
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const due = await readAs(actor, (context) => listDue(context, now));
  const t = await getTranslations('today');
  const locale = await getLocale();
  return (
    <>
      <Heading text={t('heading')} />
      <p className="quiet">{formatDateWithWeekday(todayInZone(actor.networkTimeZone, now), locale)}</p>
      <p className="chips">
        <ButtonLink href="/weighings/new">{t('weigh')}</ButtonLink>
        <ButtonLink href={'/batches/new?repeat=last' as Route} plain>
          {t('repeatBatch')}
        </ButtonLink>
        <ButtonLink href={'/batches/new' as Route} plain>
          {t('startBatch')}
        </ButtonLink>
        <ButtonLink href="/treatments/new" plain>
          {t('startTreatment')}
        </ButtonLink>
      </p>
      <h2>{t('dueHeading')}</h2>
      {due.length === 0 ? (
        <EmptyState text={t('nothing')} />
      ) : (
        <DueList lines={due} language={actor.language} />
      )}
    </>
  );
}
