import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import { formatPercent } from '../../format/percent-text';
import { amountCell } from './amount-cell';
import type { ReportTongue } from './report-tongue';

type Row = FunderReportContent['changes'][number];

function changeCell({ change }: Row, { t, locale }: ReportTongue): DocumentCell {
  if (change.kind === 'protected') return { text: t('protected') };
  if (change.kind === 'no-baseline') return { text: t('changes.noBaseline') };
  const sign = change.percent > 0 ? '+' : '';
  return { text: `${sign}${formatPercent(change.percent, locale)}`, value: change.percent };
}

/** The period beside the baseline period, with the change in percent of the baseline. */
export function changeTable(rows: readonly Row[], tongue: ReportTongue): DocumentTable {
  const { t, words, massUcum } = tongue;
  return {
    key: 'changes',
    caption: t('changes.caption'),
    columns: [
      { key: 'what', header: t('columns.what'), numeric: false },
      { key: 'before', header: t('columns.before'), numeric: true, unit: massUcum },
      { key: 'now', header: t('columns.now'), numeric: true, unit: massUcum },
      { key: 'change', header: t('columns.change'), numeric: true, unit: ucumCodes.percent },
    ],
    rows: rows.map((row) => ({
      key: row.key,
      cells: [
        { text: words(`report.changes.of.${row.key}`) },
        amountCell(row.before, tongue),
        amountCell(row.now, tongue),
        changeCell(row, tongue),
      ],
    })),
  };
}
