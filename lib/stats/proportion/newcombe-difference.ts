import { requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import type { CannotCompute } from '../outcome';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';
import type { TwoProportions } from './two-proportions';
import { wilsonLimits } from './wilson-limits';

/**
 * The difference of two proportions of independent units, first minus second, with Newcombe's hybrid score
 * interval: the distances of Wilson's limits from each proportion, squared and added. The shipped interval for a
 * difference; it stays within -1..1 and has width at 0 and at all events. An empty group: a reason.
 *
 * Source: Newcombe (1998), Statistics in Medicine 17:873-890, method 10.
 * @param level two-sided, 0 < level < 1.
 * @throws ArgumentError when counts are no counts, events exceed trials, or the level is out of range.
 */
export function newcombeDifference(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): TwoProportions | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  return newcombeOfEffectiveSizes(first, second, level);
}

/** The same for fractional effective events and trials, both trials above 0; the caller has checked them. */
export function newcombeOfEffectiveSizes(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): TwoProportions {
  const z = normalUpperQuantile((1 - level) / 2);
  const one = first.events / first.trials;
  const two = second.events / second.trials;
  const ofOne = wilsonLimits(first.events, first.trials, z);
  const ofTwo = wilsonLimits(second.events, second.trials, z);
  const difference = one - two;
  return {
    kind: 'estimate',
    estimate: difference,
    interval: {
      kind: 'interval',
      low: difference - Math.hypot(one - ofOne.low, ofTwo.high - two),
      high: difference + Math.hypot(ofOne.high - one, two - ofTwo.low),
      level,
      method: 'Newcombe hybrid score',
    },
    method: 'difference of two proportions',
    trialsInFirst: first.trials,
    trialsInSecond: second.trials,
  };
}
