import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { ReportCell } from '@/lib/report/content/funder-report';
import type { DocumentTable } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import { amountCell } from './amount-cell';
import type { ReportTongue } from './report-tongue';

/** What was grown on and is not counted as a residue, kind by kind; no total, since it is no amount of anything. */
export function leftOutTable(cells: readonly ReportCell[], tongue: ReportTongue): DocumentTable {
  const { t, words, locale, massUcum } = tongue;
  return {
    key: 'left-out',
    caption: t('residuesLeftOutCaption'),
    columns: [
      { key: 'kind', header: t('columns.kind'), numeric: false },
      { key: 'mass', header: t('columns.mass'), numeric: true, unit: massUcum },
      { key: 'sites', header: t('columns.sites'), numeric: true, unit: ucumCodes.one },
    ],
    rows: cells.map((cell) => ({
      key: cell.key,
      cells: [
        { text: words(`vocabulary.materialKind.${cell.key}`) },
        amountCell(cell, tongue),
        cell.kind === 'shown' ? { text: formatNumber(cell.sites, locale), value: cell.sites } : { text: '–' },
      ],
    })),
  };
}
