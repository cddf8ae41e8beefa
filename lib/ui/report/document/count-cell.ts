import type { ReportCell } from '@/lib/report/content/funder-report';
import type { DocumentCell } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import type { ReportTongue } from './report-tongue';

/** A count, or that it is protected. */
export function countCell(cell: ReportCell, { t, locale }: ReportTongue): DocumentCell {
  return cell.kind === 'protected'
    ? { text: t('protected') }
    : { text: formatNumber(cell.amount, locale), value: cell.amount };
}
