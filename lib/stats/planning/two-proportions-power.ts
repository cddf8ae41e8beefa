import { requireOpenProbability, requirePositive, requireProbability } from '../check-argument';
import { normalCdf, normalQuantile, normalSurvival } from '../distribution/normal';

export type TwoProportions = {
  readonly first: number;
  readonly second: number;
  /** Observations per group, need not be whole. */
  readonly perGroup: number;
  /** Two-sided significance level. */
  readonly significance: number;
};

/**
 * Power of the two-sided z test (pooled variance) of two proportions with equal groups:
 * Phi((sqrt(n) |p1 - p2| - z sqrt(2 p q)) / sqrt(p1 q1 + p2 q2)), p the mean of p1 and p2. `bothTails` adds the
 * chance of rejecting in the wrong direction, which matters only for tiny differences.
 *
 * Source: Fleiss (Statistical Methods for Rates and Proportions, ch. 3, from memory); the convention of R's
 * power.prop.test.
 *
 * @returns power 0-1. Where both proportions are 0 or both 1 nothing can be rejected: 0.
 */
export function twoProportionsPower(
  { first, second, perGroup, significance }: TwoProportions,
  bothTails = false,
): number {
  requireProbability('first', first);
  requireProbability('second', second);
  requirePositive('perGroup', perGroup);
  requireOpenProbability('significance', significance);
  const mean = (first + second) / 2;
  const alternative = Math.sqrt(first * (1 - first) + second * (1 - second));
  const distance = Math.sqrt(perGroup) * Math.abs(first - second);
  const reach = normalQuantile(1 - significance / 2) * Math.sqrt(2 * mean * (1 - mean));
  if (alternative === 0) return distance > reach ? 1 : 0;
  const right = normalCdf((distance - reach) / alternative);
  return bothTails ? right + normalSurvival((distance + reach) / alternative) : right;
}
