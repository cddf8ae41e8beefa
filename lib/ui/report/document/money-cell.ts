import { currencyDigits } from '@/lib/growing/money';
import type { ReportCell } from '@/lib/report/content/funder-report';
import type { DocumentCell } from '@/lib/report/document/report-document';
import { formatMoney } from '../../format/money-text';
import type { ReportTongue } from './report-tongue';

/** An amount of minor units as money, and in main units for a spreadsheet. */
export function moneyOf(minor: number, currency: string, locale: string): DocumentCell {
  return { text: formatMoney({ minor, currency }, locale), value: minor / 10 ** currencyDigits(currency) };
}

export function moneyCell(cell: ReportCell, currency: string, { t, locale }: ReportTongue): DocumentCell {
  return cell.kind === 'protected' ? { text: t('protected') } : moneyOf(cell.amount, currency, locale);
}
