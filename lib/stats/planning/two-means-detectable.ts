import { requireOpenProbability } from '../check-argument';
import { findRoot } from '../find-root';
import { type CannotCompute, cannotCompute } from '../outcome';
import { type TwoMeans, twoMeansPower } from './two-means-power';

export type DetectableDifference = {
  readonly kind: 'detectable';
  /** Smallest difference found with the power asked for, in the unit of the standard deviation. */
  readonly difference: number;
  readonly method: string;
};

/**
 * What difference of means can this many batches detect?
 *
 * @param given observations per group counted as independent: divide the batches by `designEffect` first.
 * @returns the difference; `out-of-range` when the power asked for is below the significance level.
 * @throws ArgumentError for values out of range.
 */
export function twoMeansDetectable(
  given: Omit<TwoMeans, 'difference'> & { readonly power: number },
): DetectableDifference | CannotCompute {
  requireOpenProbability('power', given.power);
  const excess = (difference: number) => twoMeansPower({ ...given, difference }) - given.power;
  if (excess(0) >= 0) {
    return cannotCompute('out-of-range', 'A power at or below the significance level needs no data.');
  }
  let enough = given.standardDeviation;
  while (excess(enough) < 0) enough *= 2;
  return {
    kind: 'detectable',
    difference: findRoot(excess, 0, enough),
    method: given.design === 'paired' ? 'two-sided paired t test' : 'two-sided t test of two groups',
  };
}
