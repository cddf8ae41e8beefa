import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { betaQuantile, betaUpperQuantile } from '../distribution/beta';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';

/**
 * The exact interval for a proportion: all values that neither one-sided binomial test at (1 - level) / 2 rejects.
 * Covers at least its level whatever the proportion, and more than that mostly. Exactly 0 at no events and 1 at
 * all events. No units: a reason.
 *
 * Limits are the beta(x, n - x + 1) and beta(x + 1, n - x) quantiles. Source: Clopper & Pearson (1934).
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function clopperPearsonInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  const tail = (1 - level) / 2;
  return {
    kind: 'interval',
    low: x === 0 ? 0 : betaQuantile(tail, x, n - x + 1),
    high: x === n ? 1 : betaUpperQuantile(tail, x + 1, n - x),
    level,
    method: 'Clopper-Pearson exact',
  };
}
