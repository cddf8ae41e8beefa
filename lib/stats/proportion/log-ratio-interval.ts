import { normalUpperQuantile } from '../distribution/normal';
import type { Interval } from '../outcome';

/** The interval estimate * exp(-+ z se) of a ratio whose logarithm is about normal with standard error `se`. */
export function logRatioInterval(estimate: number, se: number, level: number, method: string): Interval {
  const half = normalUpperQuantile((1 - level) / 2) * se;
  return {
    kind: 'interval',
    low: estimate * Math.exp(-half),
    high: estimate * Math.exp(half),
    level,
    method,
  };
}
