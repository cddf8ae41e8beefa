import type { ReportHeads } from '@/lib/report/content/funder-report';
import type { DocumentCell } from '@/lib/report/document/report-document';
import { formatNumber } from '../../format/number-text';
import type { ReportTongue } from './report-tongue';

/** A number of people, or that so few are not told. */
export function headsCell(heads: ReportHeads, { t, locale }: ReportTongue): DocumentCell {
  return heads.kind === 'protected'
    ? { text: t('protected') }
    : { text: formatNumber(heads.people, locale), value: heads.people };
}
