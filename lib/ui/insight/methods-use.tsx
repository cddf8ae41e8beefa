import type { MethodsAnswer } from '@/lib/analysis/method-question/methods-answer';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';

/** Odds within a fifth of a typical site's are "about as much". Our choice. */
const alike = 1.2;

/** Batches of each method at each site, and how the site does whatever it uses: why raw figures mislead. */
export function MethodsUse({ answer, words }: { answer: MethodsAnswer; words: InsightWords }) {
  const { t, names, number, language } = words;
  const methods = [...new Set(answer.use.map(({ method }) => method))].sort((a, b) =>
    names.methodName(a).localeCompare(names.methodName(b), language),
  );
  const sites = [...new Set(answer.use.map(({ siteId }) => siteId))].sort((a, b) =>
    names.siteName(a).localeCompare(names.siteName(b), language),
  );
  const batches = (siteId: string, method: string) =>
    answer.use.find((one) => one.siteId === siteId && one.method === method)?.batches ?? 0;
  const does = (siteId: string) => {
    const odds = answer.siteOdds.find((one) => one.siteId === siteId)?.odds;
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
            const count = batches(siteId, method);
            return count === 0 ? '–' : count;
          },
        })),
        { key: 'does', header: t('methods.columns.does'), cell: does },
      ]}
    />
  );
}
