import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';
import { wilsonLimits } from './wilson-limits';

/**
 * Wilson's score interval for the proportion of `x` events among `n` independent units. The shipped interval for
 * one proportion: short, within 0..1, and near its level from few units on (the exact one is never below it).
 *
 * No units: a reason. Units that share a batch are not independent; see clustered/clustered-proportion.ts.
 * Source: Wilson (1927); Newcombe (1998), Statistics in Medicine 17:857-872, method 3.
 * @param level two-sided, 0 < level < 1.
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function wilsonInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  const { low, high } = wilsonLimits(x, n, normalUpperQuantile((1 - level) / 2));
  return { kind: 'interval', low, high, level, method: 'Wilson score' };
}
