import type { CannotCompute } from '../../lib/stats/outcome';

/** The reference files write `null` where a quantity is not defined; the library answers with a reason. */
export function orNull<T>(value: T | CannotCompute | undefined): T | null {
  if (value === undefined || isCannotCompute(value)) return null;
  return value;
}

function isCannotCompute(value: unknown): value is CannotCompute {
  return typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'cannot-compute';
}

/** Both limits of an interval, `null` each where there is none. */
export function limitsOrNull(
  interval: { readonly low: number; readonly high: number } | CannotCompute | undefined,
): { lower: number | null; upper: number | null } {
  const limits = orNull(interval);
  return { lower: limits?.low ?? null, upper: limits?.high ?? null };
}
