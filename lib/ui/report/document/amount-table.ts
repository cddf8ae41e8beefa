import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { ReportCell, ReportTable } from '@/lib/report/content/funder-report';
import type { DocumentTable } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import { amountCell } from './amount-cell';
import type { ReportTongue } from './report-tongue';

type Asked = {
  readonly key: string;
  readonly caption: string;
  /** Which words of the vocabulary name the cells. */
  readonly names: 'destination' | 'materialKind';
  /** Cells that rest partly on an assumed moisture. */
  readonly assumed: readonly string[];
};

function nameOf({ key }: ReportCell, names: Asked['names'], { t, words }: ReportTongue): string {
  if (key === 'total') return t('total');
  if (key === 'unsaid') return t('unsaid');
  if (key === 'mixed') return t('mixedMaterials');
  return words(`vocabulary.${names}.${key}`);
}

/** Masses by kind with their total; protected cells say that they are, and why nothing stands there. */
export function amountTable(table: ReportTable, asked: Asked, tongue: ReportTongue): DocumentTable {
  const { t, locale, massUcum } = tongue;
  return {
    key: asked.key,
    caption: asked.caption,
    columns: [
      { key: 'kind', header: t('columns.kind'), numeric: false },
      { key: 'mass', header: t('columns.mass'), numeric: true, unit: massUcum },
      { key: 'sites', header: t('columns.sites'), numeric: true, unit: ucumCodes.one },
    ],
    rows: [...table.cells, table.total].map((cell) => ({
      key: cell.key,
      total: cell.key === 'total',
      cells: [
        { text: nameOf(cell, asked.names, tongue) },
        amountCell(cell, tongue, asked.assumed.includes(cell.key) ? t('assumed') : undefined),
        cell.kind === 'shown' ? { text: formatNumber(cell.sites, locale), value: cell.sites } : { text: '–' },
      ],
    })),
  };
}
