import { requireFinite, requireOpenProbability, requirePositive } from '../check-argument';
import { tQuantile } from '../distribution/student-t';
import { ArgumentError } from '../outcome';
import { noncentralTSurvival } from './noncentral-t';

export type BlockedMeans = {
  readonly difference: number;
  /** Standard deviation of one observation about its arm and stratum, in the unit of `difference`. */
  readonly standardDeviation: number;
  /** Observations of each arm over all strata. */
  readonly perArm: number;
  /** Arms compared, at least 2. */
  readonly arms: number;
  /** Strata (sites) that every arm occurs in. */
  readonly strata: number;
  /** Two-sided significance level. */
  readonly significance: number;
};

/**
 * Power of the two-sided t test of the difference of two arms in a layout of arms by strata, the variance being estimated
 * from all arms: df = arms perArm - strata - arms + 1, noncentrality |difference| / (sd sqrt(2 / perArm)), the noncentral
 * t beyond the critical value. With one observation of two arms in each stratum this is the paired t test.
 *
 * Source: Cox & Reid (2000), The Theory of the Design of Experiments, ch. 3 and 8 (from memory).
 *
 * @returns power 0-1; 0 where no degree of freedom is left to estimate the variance.
 * @throws ArgumentError for values out of range.
 */
export function blockedMeansPower(given: BlockedMeans): number {
  const { difference, standardDeviation, perArm, arms, strata, significance } = given;
  requireFinite('difference', difference);
  requirePositive('standardDeviation', standardDeviation);
  requireOpenProbability('significance', significance);
  for (const [name, value, least] of [
    ['perArm', perArm, 1],
    ['arms', arms, 2],
    ['strata', strata, 1],
  ] as const)
    if (!(Number.isSafeInteger(value) && value >= least))
      throw new ArgumentError(name, `must be a whole number of at least ${least}, not ${value}`);
  const df = arms * perArm - strata - arms + 1;
  if (df < 1) return 0;
  const noncentrality = Math.abs(difference) / (standardDeviation * Math.sqrt(2 / perArm));
  return noncentralTSurvival(tQuantile(1 - significance / 2, df), df, noncentrality);
}
