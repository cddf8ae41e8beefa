import { requireCount, requireNonNegative, requireOpenProbability } from '../check-argument';
import { gammaCdf, gammaQuantile, gammaSurvival } from '../distribution/gamma';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';

export type DispersedObservedExpected = {
  readonly kind: 'estimate';
  /** Observed over expected; 1 = as expected. */
  readonly estimate: number;
  readonly interval: Interval;
  /** P(as many or more | as expected). */
  readonly pUpper: number;
  /** P(as few or fewer | as expected). */
  readonly pLower: number;
  readonly observed: number;
  readonly expected: number;
  /** Variance of the count over its mean, as used: at least 1. */
  readonly dispersion: number;
  readonly method: string;
};

/**
 * Ratio of an observed count to an expected one where events come in clumps (units of one batch fail together): the
 * variance of the count is `dispersion` times its mean. Both counts are divided by the dispersion, which gives the
 * size of a Poisson count with the same relative spread, and Garwood's limits and tails of that count are taken
 * through the gamma distribution, which does not need whole numbers: P(X >= k) = P(gamma(k) <= mean).
 *
 * With a dispersion of 1 these are the exact limits of `observedExpected`. A dispersion below 1 counts as 1. At no
 * event the lower limit is 0 and `pUpper` is 1. An expectation of 0 gives a reason.
 *
 * Source: Garwood (1936), Biometrika 28:437-442, for the limits; dividing by the dispersion is quasi-likelihood,
 * McCullagh & Nelder (1989), Generalized Linear Models, section 6.2 (both from memory).
 *
 * @param observed whole number of events.
 * @param expected events that a reference leads to expect, taken as known.
 * @param dispersion variance over mean of the count when all is as expected.
 * @param level two-sided, 0 < level < 1.
 * @throws ArgumentError for a count that is no count, a negative expectation or dispersion, or a level outside (0, 1).
 */
export function dispersedObservedExpected(
  observed: number,
  expected: number,
  dispersion: number,
  level: number,
): DispersedObservedExpected | CannotCompute {
  requireCount('observed', observed);
  requireNonNegative('expected', expected);
  requireNonNegative('dispersion', dispersion);
  requireOpenProbability('level', level);
  if (expected === 0)
    return cannotCompute('zero-denominator', 'No event was expected, so there is no ratio to it.');
  const factor = Math.max(1, dispersion);
  const size = observed / factor;
  const mean = expected / factor;
  const alpha = 1 - level;
  return {
    kind: 'estimate',
    estimate: observed / expected,
    interval: {
      kind: 'interval',
      low: size === 0 ? 0 : gammaQuantile(alpha / 2, size) / mean,
      high: gammaQuantile(1 - alpha / 2, size + 1) / mean,
      level,
      method: 'Garwood limits of the count divided by its dispersion',
    },
    pUpper: size === 0 ? 1 : gammaCdf(mean, size),
    pLower: gammaSurvival(mean, size + 1),
    observed,
    expected,
    dispersion: factor,
    method: 'observed over expected, dispersed Poisson',
  };
}
