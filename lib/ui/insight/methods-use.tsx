import type { MethodsAnswer } from '@/lib/analysis/method-question/methods-answer';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';

/** Odds within a fifth of a typical site's are "about as much". Our choice. */
const alike = 1.2;

/** The sites with most batches are enough to see why raw figures mislead; a thousand rows nobody reads. */
const mostSites = 50;

/** Batches of each method at each site, and how the site does whatever it uses: why raw figures mislead. */
export function MethodsUse({ answer, words }: { answer: MethodsAnswer; words: InsightWords }) {
  const { t, names, number, language } = words;
  const methods = [...new Set(answer.use.map(({ method }) => method))].sort((a, b) =>
    names.methodName(a).localeCompare(names.methodName(b), language),
  );
  const used = new Map(answer.use.map(({ siteId, method, batches }) => [`${siteId} ${method}`, batches]));
  const begun = new Map<string, number>();
  for (const { siteId, batches } of answer.use) begun.set(siteId, (begun.get(siteId) ?? 0) + batches);
  const all = [...begun].sort(([, a], [, b]) => b - a).map(([siteId]) => siteId);
  const sites = all
    .slice(0, mostSites)
    .sort((a, b) => names.siteName(a).localeCompare(names.siteName(b), language));
  const oddsAt = new Map(answer.siteOdds.map(({ siteId, odds }) => [siteId, odds]));
  const does = (siteId: string) => {
    const odds = oddsAt.get(siteId);
    if (odds === undefined) return '–';
    const way = odds > alike ? 'more' : odds < 1 / alike ? 'less' : 'same';
    return (
      <span className="inline-block sm:min-w-48">
        {t(`methods.does.${way}`)}{' '}
        <span className="quiet">{t('methods.does.odds', { odds: number(odds, 1) })}</span>
      </span>
    );
  };
  return (
    <>
      {all.length > sites.length ? (
        <p>{t('methods.useMost', { shown: sites.length, count: all.length })}</p>
      ) : null}
      <DataTable
        caption={t('methods.useTable')}
        rows={sites}
        rowKey={(siteId) => siteId}
        columns={[
          { key: 'site', header: t('methods.columns.site'), cell: (siteId) => names.siteName(siteId) },
          ...methods.map((method) => ({
            key: method,
            header: names.methodName(method),
            numeric: true,
            cell: (siteId: string) => {
              return used.get(`${siteId} ${method}`) || '–';
            },
          })),
          { key: 'does', header: t('methods.columns.does'), cell: does },
        ]}
      />
    </>
  );
}
