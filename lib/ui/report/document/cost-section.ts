import type { PerKilogram } from '@/lib/analysis/costs/cost-group';
import { perMassUnit } from '@/lib/growing/per-mass-unit';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import { formatMoney } from '../../format/money-text';
import { formatNumber } from '../../format/number-text';
import { formatWorkMinutes } from '../../format/work-text';
import type { IndicatorSection } from './indicator-sections';
import { moneyOf } from './money-cell';
import type { ReportTongue } from './report-tongue';

type Told = NonNullable<FunderReportContent['costs']>;
type Row = Told['all'];

function figureCell(figure: Row['cost'], currency: string, tongue: ReportTongue): DocumentCell {
  const { t, locale, massUnit } = tongue;
  if (figure.kind === 'protected') return { text: t('protected') };
  // Stored as the analysis made it; the report's schema has checked the kind.
  const told = figure as unknown as PerKilogram;
  if (told.kind === 'cannot') return { text: '–', below: t(`costs.cannot.${told.reason}`) };
  const inUnit = (perKg: number) => perMassUnit(perKg, massUnit);
  const money = (perKg: number) => formatMoney({ minor: Math.round(inUnit(perKg)), currency }, locale);
  const { interval, batches, groups } = told;
  const limits =
    interval.kind === 'interval'
      ? ` (${t('costs.interval', { low: money(interval.low), high: money(interval.high) })})`
      : '';
  return {
    ...moneyOf(inUnit(told.minorPerKg), currency, locale),
    text: `${money(told.minorPerKg)}${limits}`,
    below: [
      t('costs.size', { batches, sites: groups }),
      ...(interval.kind === 'none' ? [t('costs.noInterval')] : []),
    ].join(', '),
  };
}

function workCell(minutes: number, locale: string): DocumentCell {
  return { text: formatWorkMinutes(minutes, locale), value: minutes };
}

function costTable({ all, methods, currency }: Told, tongue: ReportTongue): DocumentTable {
  const { t, own, locale, massUnit, massUcum } = tongue;
  return {
    key: 'costs',
    caption: t('costs.caption', { currency, unit: massUnit }),
    columns: [
      { key: 'method', header: t('columns.method'), numeric: false },
      {
        key: 'cost',
        header: t('columns.costPerUnit', { unit: massUnit }),
        numeric: true,
        unit: `${currency}/${massUcum}`,
      },
      {
        key: 'margin',
        header: t('columns.marginPerUnit', { unit: massUnit }),
        numeric: true,
        unit: `${currency}/${massUcum}`,
      },
      {
        key: 'work',
        header: t('columns.workPerUnit', { unit: massUnit }),
        numeric: true,
        unit: `min/${massUcum}`,
      },
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
          : workCell(perMassUnit(row.labourMinutesPerKg, massUnit), locale),
      ],
    })),
  };
}

/** What a kilogram or a pound cost and what was left of its price, by method. */
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
      t('costs.method', { unit: tongue.massUnit }),
    ],
  };
};
