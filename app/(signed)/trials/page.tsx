import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { dateInZone } from '@/lib/growing/calendar-date';
import { listTrials } from '@/lib/records/trial/list-trials.query';
import { listTrialResults } from '@/lib/report/trial/list-trial-results.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Status } from '@/lib/ui/page/status';
import { DataTable } from '@/lib/ui/table/data-table';

const tones = { draft: 'plain', running: 'watch', ended: 'watch', published: 'good' } as const;

export default async function TrialsPage() {
  const actor = await requireActor();
  const trials = await readAs(actor, listTrials);
  const results = await readAs(actor, listTrialResults);
  const t = await getTranslations('trials');
  const locale = await getLocale();
  const coordinates = actor.role === 'coordinator';
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">{t('lead')}</p>
      {coordinates ? (
        <p>
          <ButtonLink href={'/trials/new' as Route}>{t('new')}</ButtonLink>
        </p>
      ) : null}
      {trials.length + results.length === 0 ? (
        <EmptyState text={t(coordinates ? 'emptyCoordinator' : 'emptyMember')} />
      ) : null}
      {trials.length === 0 ? null : (
        <DataTable
          caption={t('listCaption')}
          rows={trials}
          rowKey={({ id }) => id}
          columns={[
            {
              key: 'title',
              header: t('columns.title'),
              roomy: true,
              cell: ({ id, title, question }) => (
                <>
                  <Link href={`/trials/${id}` as Route}>{title}</Link>
                  <span className="cell-reason">{question}</span>
                </>
              ),
            },
            {
              key: 'state',
              header: t('columns.state'),
              cell: ({ state }) => <Status tone={tones[state]} word={t(`state.${state}`)} />,
            },
            {
              key: 'runs',
              header: t('columns.runs'),
              numeric: true,
              cell: ({ planned, recruited }) =>
                planned === 0 ? '–' : t('runsOf', { made: recruited, planned }),
            },
          ]}
        />
      )}
      {results.length === 0 ? null : (
        <DataTable
          caption={t('resultsCaption')}
          rows={results}
          rowKey={({ trialId }) => trialId}
          columns={[
            {
              key: 'title',
              header: t('resultsColumns.title'),
              cell: ({ trialId, title, question }) => (
                <>
                  <Link href={`/trials/${trialId}/result` as Route}>{title}</Link>
                  <span className="cell-reason">{question}</span>
                </>
              ),
            },
            {
              key: 'published',
              header: t('resultsColumns.published'),
              cell: ({ publishedAt }) =>
                formatDate(dateInZone(new Date(publishedAt), actor.networkTimeZone), locale),
            },
          ]}
        />
      )}
    </>
  );
}
