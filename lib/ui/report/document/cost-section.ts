import type { PerKilogram } from '@/lib/analysis/costs/cost-group';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import { formatMoney } from '../../format/money-text';
import { formatNumber } from '../../format/number-text';
import type { IndicatorSection } from './indicator-sections';
import { moneyOf } from './money-cell';
import type { ReportTongue } from './report-tongue';

type Told = NonNullable<FunderReportContent['costs']>;
type Row = Told['all'];

function figureCell(figure: Row['cost'], currency: string, tongue: ReportTongue): DocumentCell {
  const { t, locale } = tongue;
  if (figure.kind === 'protected') return { text: t('protected') };
  // Stored as the analysis made it; the report's schema has checked the kind.
  const told = figure as unknown as PerKilogram;
  if (told.kind === 'cannot') return { text: '–', below: t(`costs.cannot.${told.reason}`) };
  const money = (minor: number) => formatMoney({ minor: Math.round(minor), currency }, locale);
  const { interval, batches, groups } = told;
  const limits =
    interval.kind === 'interval'
      ? ` (${t('costs.interval', { low: money(interval.low), high: money(interval.high) })})`
      : '';
  return {
    ...moneyOf(told.minorPerKg, currency, locale),
    text: `${money(told.minorPerKg)}${limits}`,
    below: [
      t('costs.size', { batches, sites: groups }),
      ...(interval.kind === 'none' ? [t('costs.noInterval')] : []),
    ].join(', '),
  };
}

function costTable({ all, methods, currency }: Told, tongue: ReportTongue): DocumentTable {
  const { t, own, locale } = tongue;
  return {
    key: 'costs',
    caption: t('costs.caption', { currency }),
    columns: [
      { key: 'method', header: t('columns.method'), numeric: false },
      { key: 'cost', header: t('columns.costPerKg'), numeric: true, unit: `${currency}/kg` },
      { key: 'margin', header: t('columns.marginPerKg'), numeric: true, unit: `${currency}/kg` },
      { key: 'work', header: t('columns.workPerKg'), numeric: true, unit: 'min/kg' },
    ],
    rows: [...methods, all].map((row) => ({
      key: row.key,
      total: row.key === 'all',
      cells: [
        { text: row.key === 'all' ? t('costs.all') : own({ en: row.methodEn, es: row.methodEs }) },
        figureCell(row.cost, currency, tongue),
        figureCell(row.margin, currency, tongue),
        row.labourMinutesPerKg === null
          ? { text: '–' }
          : { text: formatNumber(row.labourMinutesPerKg, locale, 0), value: row.labourMinutesPerKg },
      ],
    })),
  };
}

/** What a kilogram cost and what was left of its price, by method. */
export const costSection: IndicatorSection = ({ costs: told, rule }, tongue) => {
  const { t, locale } = tongue;
  if (!told || told.batches === 0) return { paragraphs: [t('costs.none')] };
  const { batches, fullBatches, labourMinorPerHour, currency, missing } = told;
  const nothingTold = [told.all, ...told.methods].every(({ cost }) => cost.kind === 'protected');
  return {
    paragraphs: [
      t('costs.note', { full: fullBatches, batches }),
      labourMinorPerHour === null
        ? t('costs.withoutWork')
        : t('costs.withWork', { hour: formatMoney({ minor: labourMinorPerHour, currency }, locale) }),
      ...(nothingTold
        ? [t('costs.allKept', { sites: rule.minSites, percent: formatNumber(rule.topTwoPercent, locale) })]
        : []),
    ],
    tables: [costTable(told, tongue)],
    notes: [
      ...(missing.length === 0
        ? []
        : [
            t('costs.missing', {
              parts: missing
                .map(({ part, batches: count }) => `${t(`costs.part.${part}`)} (${count})`)
                .join(', '),
            }),
          ]),
      t('costs.method'),
    ],
  };
};
