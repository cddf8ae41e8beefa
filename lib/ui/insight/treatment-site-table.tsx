import type { Route } from 'next';
import type { SiteRuns } from '@/lib/analysis/treatment-question/treatments-answer';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { lastSignal } from './last-signal';

type Props = {
  /** In the order of their names. */
  readonly sites: readonly SiteRuns[];
  readonly verdict: (site: SiteRuns) => string;
  readonly words: InsightWords;
};

const tells = ({ outside, long, drift }: SiteRuns) =>
  outside > 0 || long > 0 || (drift !== null && lastSignal(drift) !== undefined);

/** How many runs of each site held, method by method: those with something to mend in sight, the others behind a fold. */
export function TreatmentSiteTable({ sites, verdict, words }: Props) {
  const { t } = words;
  const told = sites.filter(tells);
  const quiet = sites.filter((site) => !tells(site));
  const table = (rows: readonly SiteRuns[]) => <SiteTable sites={rows} verdict={verdict} words={words} />;
  return (
    <>
      {told.length === 0 ? null : table(told)}
      {quiet.length === 0 ? null : (
        <details className="printed-fold">
          <summary>{t('treatments.quietRows', { count: quiet.length })}</summary>
          {table(quiet)}
        </details>
      )}
    </>
  );
}

function SiteTable({ sites, verdict, words }: Props) {
  const { t, names, number } = words;
  const count = (key: 'runs' | 'short' | 'long' | 'unknown', of: (site: SiteRuns) => number) => ({
    key,
    header: t(`treatments.columns.${key}`),
    numeric: true,
    cell: (site: SiteRuns) => number(of(site)),
  });
  return (
    <DataTable
      caption={t('treatments.siteTable')}
      rows={sites}
      rowKey={({ siteId, methodId }) => `${siteId} ${methodId}`}
      groupOf={({ siteId }) => names.siteName(siteId)}
      columns={[
        {
          key: 'method',
          header: t('treatments.columns.method'),
          cell: ({ siteId, methodId }) => (
            <Link href={`/treatments?site=${siteId}&method=${methodId}` as Route}>
              {names.methodName(methodId)}
            </Link>
          ),
        },
        count('runs', ({ runs }) => runs),
        count('short', ({ outside }) => outside),
        count('long', ({ long }) => long),
        count('unknown', ({ unknown }) => unknown),
        {
          key: 'held',
          header: t('treatments.columns.held'),
          unit: '×',
          numeric: true,
          cell: ({ drift }) => {
            const last = drift?.at(-1);
            return last === undefined ? '–' : number(last.average, 2);
          },
        },
        { key: 'drift', header: t('treatments.columns.drift'), cell: verdict },
      ]}
    />
  );
}
