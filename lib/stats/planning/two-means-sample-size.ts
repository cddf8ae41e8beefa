import { requireFinite, requireOpenProbability, requirePositive } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { findRoot } from '../find-root';
import { type CannotCompute, cannotCompute } from '../outcome';
import { type TwoMeans, twoMeansPower } from './two-means-power';
import { wholeNumber } from './whole-number';

export type TwoMeansPlan = Omit<TwoMeans, 'perGroup'> & { readonly power: number };

export type MeansSampleSize = {
  readonly kind: 'sample-size';
  /** Independent observations per group (or pairs), not rounded. */
  readonly perGroup: number;
  readonly perGroupWhole: number;
  /** By the normal distribution, which forgets that the spread is estimated: too small for few batches. */
  readonly perGroupNormal: number;
  readonly method: string;
};

/** The search stops here: more than a thousand million batches a group. */
const LARGEST = 1e9;
/** The fewest observations per group with which a spread can be estimated. */
const SMALLEST = 2;

/**
 * Observations needed for the two-sided t test to find a difference of means with the power asked for.
 *
 * @returns the size, at least 2; `not-identifiable` for a difference of 0; `out-of-range` beyond 1e9 per group.
 * @throws ArgumentError for values out of range.
 */
export function twoMeansSampleSize(plan: TwoMeansPlan): MeansSampleSize | CannotCompute {
  const { difference, standardDeviation, significance, power, design } = plan;
  requireFinite('difference', difference);
  requirePositive('standardDeviation', standardDeviation);
  requireOpenProbability('significance', significance);
  requireOpenProbability('power', power);
  if (difference === 0) {
    return cannotCompute('not-identifiable', 'The difference is 0: no number of batches can find it.');
  }
  const samples = design === 'paired' ? 1 : 2;
  const quantiles = normalQuantile(1 - significance / 2) + normalQuantile(power);
  const perGroupNormal = samples * ((quantiles * standardDeviation) / difference) ** 2;
  const excess = (perGroup: number) => twoMeansPower({ ...plan, perGroup }) - power;
  let enough = Math.max(SMALLEST, perGroupNormal);
  while (excess(enough) < 0) {
    enough *= 2;
    if (enough > LARGEST)
      return cannotCompute('out-of-range', 'The difference is too small for any trial to find.');
  }
  const perGroup = excess(SMALLEST) >= 0 ? SMALLEST : findRoot(excess, SMALLEST, enough);
  return {
    kind: 'sample-size',
    perGroup,
    perGroupWhole: wholeNumber(perGroup),
    perGroupNormal,
    method: design === 'paired' ? 'two-sided paired t test' : 'two-sided t test of two groups',
  };
}
