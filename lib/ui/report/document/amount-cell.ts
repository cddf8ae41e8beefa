import type { ReportCell } from '@/lib/report/content/funder-report';
import type { DocumentCell } from '@/lib/report/document/report-document';
import type { ReportTongue } from './report-tongue';

/** A mass, or that it is protected. */
export function amountCell(cell: ReportCell, tongue: ReportTongue, below?: string): DocumentCell {
  if (cell.kind === 'protected') return { text: tongue.t('protected') };
  return {
    text: tongue.mass(cell.amount),
    value: tongue.massValue(cell.amount),
    ...(below === undefined ? {} : { below }),
  };
}
