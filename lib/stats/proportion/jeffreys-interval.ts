import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { betaQuantile, betaUpperQuantile } from '../distribution/beta';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';

/**
 * The equal-tailed interval of the beta(x + 1/2, n - x + 1/2) posterior under Jeffreys' prior, with the ends set to
 * 0 at no events and 1 at all events. No units: a reason.
 *
 * Source: Brown, Cai & DasGupta (2001), Statistical Science 16:101-133 (citation from memory).
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function jeffreysInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  const tail = (1 - level) / 2;
  return {
    kind: 'interval',
    low: x === 0 ? 0 : betaQuantile(tail, x + 0.5, n - x + 0.5),
    high: x === n ? 1 : betaUpperQuantile(tail, x + 0.5, n - x + 0.5),
    level,
    method: 'Jeffreys',
  };
}
