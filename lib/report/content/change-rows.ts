import { percentChange } from '@/lib/growing/percent-change';
import type { FunderReportContent, ReportCell } from './funder-report';

type Row = FunderReportContent['changes'][number];

function changeOf(before: ReportCell, now: ReportCell): Row['change'] {
  if (before.kind === 'protected' || now.kind === 'protected') return { kind: 'protected' };
  const percent = percentChange(before.amount, now.amount);
  return percent.kind === 'value' ? { kind: 'percent', percent: percent.value } : { kind: 'no-baseline' };
}

/** A total of the period beside the same of the baseline period. */
export function changeRow(key: string, before: ReportCell, now: ReportCell): Row {
  return { key, before, now, change: changeOf(before, now) };
}
