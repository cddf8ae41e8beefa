import { tUpperQuantile } from '../distribution/student-t';
import type { Interval } from '../outcome';

/** estimate -+ t(df) se. */
export function tInterval(
  estimate: number,
  standardError: number,
  df: number,
  level: number,
  of = 't',
): Interval {
  const half = tUpperQuantile((1 - level) / 2, df) * standardError;
  const shown = Number.isInteger(df) ? String(df) : df.toFixed(1);
  return {
    kind: 'interval',
    low: estimate - half,
    high: estimate + half,
    level,
    method: `${of} with ${shown} degree${df === 1 ? '' : 's'} of freedom`,
  };
}
