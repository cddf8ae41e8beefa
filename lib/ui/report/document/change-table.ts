import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { FunderReportContent, ReportCell } from '@/lib/report/content/funder-report';
import type { DocumentCell, DocumentTable } from '@/lib/report/document/report-document';
import { formatPercent } from '../../format/percent-text';
import { amountCell } from './amount-cell';
import { moneyCell } from './money-cell';
import type { ReportTongue } from './report-tongue';

type Row = FunderReportContent['changes'][number];

function changeCell({ change }: Row, { t, locale }: ReportTongue): DocumentCell {
  if (change.kind === 'protected') return { text: t('protected') };
  if (change.kind === 'no-baseline') return { text: t('changes.noBaseline') };
  const sign = change.percent > 0 ? '+' : '';
  return { text: `${sign}${formatPercent(change.percent, locale)}`, value: change.percent };
}

/** A total, and from how many sites it comes: a change may be one of who wrote things down. */
function totalCell({ currency }: Row, cell: ReportCell, tongue: ReportTongue): DocumentCell {
  const told = currency === undefined ? amountCell(cell, tongue) : moneyCell(cell, currency, tongue);
  return cell.kind === 'shown' && cell.sites > 0
    ? { ...told, below: tongue.t('changes.sites', { count: cell.sites }) }
    : told;
}

/** The period beside the baseline period, with the change in percent of the baseline. */
export function changeTable(rows: readonly Row[], tongue: ReportTongue): DocumentTable {
  const { t, words } = tongue;
  return {
    key: 'changes',
    caption: t('changes.caption'),
    columns: [
      { key: 'what', header: t('columns.what'), numeric: false },
      { key: 'before', header: t('columns.before'), numeric: true },
      { key: 'now', header: t('columns.now'), numeric: true },
      { key: 'change', header: t('columns.change'), numeric: true, unit: ucumCodes.percent },
    ],
    rows: rows.map((row) => ({
      key: `${row.key} ${row.currency ?? ''}`.trim(),
      cells: [
        { text: words(`report.changes.of.${row.key}`) },
        totalCell(row, row.before, tongue),
        totalCell(row, row.now, tongue),
        changeCell(row, tongue),
      ],
    })),
  };
}
