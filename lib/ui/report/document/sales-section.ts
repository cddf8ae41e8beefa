import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentTable } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import { amountCell } from './amount-cell';
import { countCell } from './count-cell';
import type { IndicatorSection } from './indicator-sections';
import { moneyCell } from './money-cell';
import type { ReportTongue } from './report-tongue';

type Told = FunderReportContent['sales'][number];

function salesTable({ currency, outlets }: Told, tongue: ReportTongue): DocumentTable {
  const { t, words, locale } = tongue;
  return {
    key: `sales ${currency}`,
    caption: t('sales.caption', { currency }),
    columns: [
      { key: 'outlet', header: t('columns.outlet'), numeric: false },
      { key: 'amount', header: t('columns.amount'), numeric: true, unit: currency },
      { key: 'sites', header: t('columns.sites'), numeric: true, unit: ucumCodes.one },
    ],
    rows: [...outlets.cells, outlets.total].map((cell) => ({
      key: cell.key,
      total: cell.key === 'total',
      cells: [
        { text: cell.key === 'total' ? t('total') : words(`vocabulary.outletKind.${cell.key}`) },
        moneyCell(cell, currency, tongue),
        cell.kind === 'shown' ? { text: formatNumber(cell.sites, locale), value: cell.sites } : { text: '–' },
      ],
    })),
  };
}

const counted = ({ sales, salesWithCustomers }: Told, { t }: ReportTongue) =>
  sales === undefined || salesWithCustomers === undefined
    ? undefined
    : t('sales.counted', { sales, counted: salesWithCustomers });

/** The mass sold beside what the harvest says went to sale: of much of that nobody may have written down a price. */
function besideHarvest({ sales, harvest, indicators }: FunderReportContent, tongue: ReportTongue): string[] {
  const [only] = sales;
  const sold = harvest.cells.find(({ key }) => key === 'sold');
  if (sales.length !== 1 || only?.grams.kind !== 'shown' || sold?.kind !== 'shown') return [];
  if (!indicators.includes('harvest')) return [];
  return [
    tongue.t('sales.besideHarvest', {
      written: amountCell(only.grams, tongue).text,
      sites: only.grams.sites,
      sold: amountCell(sold, tongue).text,
    }),
  ];
}

/** Sales by outlet, each currency apart, with the mass sold and the customers counted. */
export const salesSection: IndicatorSection = (content, tongue) => {
  const { t } = tongue;
  const { sales } = content;
  if (sales.length === 0) return { paragraphs: [t('sales.none')] };
  const name = (label: string, { currency }: Told) => (sales.length === 1 ? label : `${label} (${currency})`);
  return {
    paragraphs: [t('sales.note'), ...besideHarvest(content, tongue)],
    facts: sales.flatMap((told) => [
      {
        key: `mass ${told.currency}`,
        label: name(t('sales.mass'), told),
        ...amountCell(told.grams, tongue),
      },
      ...(told.salesWithCustomers === 0
        ? []
        : [
            {
              key: `customers ${told.currency}`,
              label: name(t('sales.customers'), told),
              ...countCell(told.customers, tongue),
            },
          ]),
    ]),
    tables: sales.map((told) => salesTable(told, tongue)),
    notes: sales.flatMap((told) => counted(told, tongue) ?? []),
  };
};
