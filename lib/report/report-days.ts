import type { Period } from '@/lib/analysis/production/read-production';
import { invalid, ok, type Result } from '@/lib/base/result';

export type TypedDays = {
  readonly from: string;
  readonly to: string;
  readonly baselineFrom: string | null;
  readonly baselineTo: string | null;
};

/** The period of a report and its baseline, which is whole, or not there, and lies before. */
export function reportDays({
  from,
  to,
  baselineFrom,
  baselineTo,
}: TypedDays): Result<{ readonly period: Period; readonly baseline: Period | undefined }> {
  const period = { from, to };
  if (to < from) return invalid('to', 'before', { date: from });
  if (baselineFrom === null && baselineTo === null) return ok({ period, baseline: undefined });
  if (baselineFrom === null) return invalid('baselineFrom', 'missing');
  if (baselineTo === null) return invalid('baselineTo', 'missing');
  if (baselineTo < baselineFrom) return invalid('baselineTo', 'before', { date: baselineFrom });
  if (baselineTo >= from) return invalid('baselineTo', 'baseline-before', { date: from });
  return ok({ period, baseline: { from: baselineFrom, to: baselineTo } });
}
