import { requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import type { CannotCompute } from '../outcome';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';
import type { TwoProportions } from './two-proportions';

/**
 * The difference of two proportions with the textbook normal interval. Kept for comparison with published tables
 * only: with few units or rates near 0 it covers far less than its level and has no width at 0 and at all events.
 * An empty group: a reason.
 *
 * @throws ArgumentError when counts are no counts, events exceed trials, or the level is out of range.
 */
export function waldDifference(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): TwoProportions | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  const one = first.events / first.trials;
  const two = second.events / second.trials;
  const variance = (one * (1 - one)) / first.trials + (two * (1 - two)) / second.trials;
  const half = normalUpperQuantile((1 - level) / 2) * Math.sqrt(variance);
  return {
    kind: 'estimate',
    estimate: one - two,
    interval: { kind: 'interval', low: one - two - half, high: one - two + half, level, method: 'Wald' },
    method: 'difference of two proportions',
    trialsInFirst: first.trials,
    trialsInSecond: second.trials,
  };
}
