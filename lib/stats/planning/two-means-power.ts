import { requireFinite, requireOpenProbability, requirePositive } from '../check-argument';
import { tQuantile } from '../distribution/student-t';
import { ArgumentError } from '../outcome';
import { noncentralTSurvival } from './noncentral-t';

/** Two independent groups of n each, or n pairs (the same site or lot in both). */
export type MeansDesign = 'independent' | 'paired';

export type TwoMeans = {
  readonly difference: number;
  /** Standard deviation within a group (of the differences for pairs), in the unit of `difference`. */
  readonly standardDeviation: number;
  /** Observations per group or pairs, above 1; need not be whole. */
  readonly perGroup: number;
  /** Two-sided significance level. */
  readonly significance: number;
  readonly design: MeansDesign;
};

/**
 * Power of the two-sided t test of a difference of means: the noncentral t beyond the critical value, df = 2 (n - 1)
 * and noncentrality sqrt(n / 2) difference / sd (pairs: n - 1 and sqrt(n)). `bothTails` adds the wrong direction.
 *
 * Source: Cohen (Statistical Power Analysis, from memory); the convention of R's power.t.test.
 */
export function twoMeansPower(
  { difference, standardDeviation, perGroup, significance, design }: TwoMeans,
  bothTails = false,
): number {
  requireFinite('difference', difference);
  requirePositive('standardDeviation', standardDeviation);
  requireOpenProbability('significance', significance);
  if (!(perGroup > 1 && Number.isFinite(perGroup))) {
    throw new ArgumentError('perGroup', `must be above 1, not ${perGroup}`);
  }
  const samples = design === 'paired' ? 1 : 2;
  const df = samples * (perGroup - 1);
  const noncentrality = (Math.sqrt(perGroup / samples) * Math.abs(difference)) / standardDeviation;
  const critical = tQuantile(1 - significance / 2, df);
  const right = noncentralTSurvival(critical, df, noncentrality);
  return bothTails ? right + noncentralTSurvival(critical, df, -noncentrality) : right;
}
