import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listUnreadNotices } from '@/lib/records/lot-notice/list-unread-notices.query';
import { formatDateWithWeekday } from '@/lib/ui/format/date-text';
import { UnreadNotices } from '@/lib/ui/notices/unread-notices';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Notice } from '@/lib/ui/page/notice';
import { DueList } from '@/lib/ui/today/due-list';
import { OpenSites } from '@/lib/ui/today/open-sites';
import { SiteChips } from '@/lib/ui/today/site-chips';
import { TrialsToday } from '@/lib/ui/trials/trials-today';
import { markNoticeReadAction } from '../lot-notices/actions';
import { loadToday } from './load-today';
import { loadTrials } from './load-trials';

export default async function TodayPage({ searchParams }: PageProps<'/today'>) {
  const { site, saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const { due, chosen, counts, at, idle, notices, trials } = await readAs(actor, async (context) => ({
    ...(await loadToday(context, site, now)),
    notices: await listUnreadNotices(context),
    trials: await loadTrials(context, now),
  }));
  const lines = chosen === undefined ? due : due.filter(({ siteId }) => siteId === chosen);
  const t = await getTranslations('today');
  const watch = await getTranslations('watch.records');
  const next = await getTranslations('insight.next');
  const told = await getTranslations('notices');
  const locale = await getLocale();
  return (
    <>
      <Heading text={t('heading')} />
      <p className="quiet">{formatDateWithWeekday(todayInZone(actor.networkTimeZone, now), locale)}</p>
      {saved === 'notice' ? <Notice>{told('readSaved')}</Notice> : null}
      <UnreadNotices notices={notices} language={actor.language} markRead={markNoticeReadAction} />
      <p className="chips">
        <ButtonLink href={'/quick/harvest' as Route} plain>
          {t('weigh')}
        </ButtonLink>
        <ButtonLink href={'/quick/contamination' as Route} plain>
          {t('contamination')}
        </ButtonLink>
        <ButtonLink href={'/quick/check' as Route} plain>
          {t('check')}
        </ButtonLink>
      </p>
      {idle === undefined ? null : <Notice>{t('open.noneAt', { site: idle })}</Notice>}
      {counts === undefined ? <SiteChips lines={due} chosen={chosen} /> : null}
      {counts !== undefined && at !== undefined ? <OpenSites counts={counts} at={at} /> : null}
      {due.length > 0 ? (
        <DueList lines={lines} language={actor.language} temperatureUnit={actor.temperatureUnit} now={now} />
      ) : counts !== undefined && at === undefined ? null : (
        <EmptyState text={t('nothing')} />
      )}
      {counts !== undefined && at === undefined ? <OpenSites counts={counts} at={at} /> : null}
      <TrialsToday runs={trials.runs} behind={trials.behind} />
      <h2>{t('startHeading')}</h2>
      <p className="chips">
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
      <p>
        <Link href={'/questions/records' as Route}>{watch('ownLink')}</Link>
      </p>
      <p>
        <Link href={'/questions/next' as Route}>{next('todayLink')}</Link>
      </p>
    </>
  );
}
