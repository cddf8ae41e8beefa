import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';

/**
 * Wilson's score interval with a continuity correction: wider, close to the exact interval. Exactly 0 at no events
 * and 1 at all events. No units: a reason.
 *
 * Source: Newcombe (1998), Statistics in Medicine 17:857-872, method 4.
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function wilsonContinuityInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  const z = normalUpperQuantile((1 - level) / 2);
  return {
    kind: 'interval',
    low: x === 0 ? 0 : correctedLow(x, n, z),
    high: x === n ? 1 : 1 - correctedLow(n - x, n, z),
    level,
    method: 'Wilson score with continuity correction',
  };
}

function correctedLow(x: number, n: number, z: number): number {
  const root = Math.sqrt(z * z - 2 - 1 / n + 4 * (x / n) * (n - x + 1));
  return Math.max(0, (2 * x + z * z - 1 - z * root) / (2 * (n + z * z)));
}
