import type { CannotCompute, Interval } from '@/lib/stats/outcome';
import type { ShownInterval } from './shown-figure';

/**
 * Limits in the unit that is shown: each times `factor`. Rates and yields cannot be negative, so a lower limit
 * below nothing is shown at nothing.
 */
export function shownInterval(interval: Interval | CannotCompute, factor: number): ShownInterval {
  if (interval.kind === 'cannot-compute') return { kind: 'none', reason: 'not-enough-data' };
  const { low, high, level, method } = interval;
  return { kind: 'interval', low: Math.max(0, factor * low), high: factor * high, level, method };
}
