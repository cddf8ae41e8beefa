import { percentChange } from '@/lib/growing/percent-change';
import type { FunderReportContent, ReportCell } from './funder-report';
import { salesTotal } from './sales-part';

type Row = FunderReportContent['changes'][number];
type Totals = Pick<FunderReportContent, 'harvest' | 'residues' | 'sales'>;

function changeOf(before: ReportCell, now: ReportCell): Row['change'] {
  if (before.kind === 'protected' || now.kind === 'protected') return { kind: 'protected' };
  const percent = percentChange(before.amount, now.amount);
  return percent.kind === 'value' ? { kind: 'percent', percent: percent.value } : { kind: 'no-baseline' };
}

/** One total beside that of the baseline. */
export const changeRow = (key: string, before: ReportCell, now: ReportCell): Row => ({
  ...{ key, before, now },
  change: changeOf(before, now),
});

/** Totals of the period beside those of the baseline period; the sales of each currency that either of them has. */
export function changeRows(before: Totals, now: Totals): Row[] {
  const currencies = [...new Set([...before.sales, ...now.sales].map(({ currency }) => currency))].sort();
  return [
    changeRow('harvest', before.harvest.total, now.harvest.total),
    changeRow('residues', before.residues.total, now.residues.total),
    ...currencies.map((currency) => ({
      ...changeRow('sales', salesTotal(before.sales, currency), salesTotal(now.sales, currency)),
      currency,
    })),
  ];
}
