import { requireCount, requireNonNegative, requireOpenProbability } from '../check-argument';
import { gammaQuantile } from '../distribution/gamma';
import { normalQuantile } from '../distribution/normal';
import { poissonCdf, poissonDensity, poissonSurvival } from '../distribution/poisson';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { leastLikelyTail } from './least-likely-tail';
import { midPoissonMean } from './mid-poisson-mean';
import { type TailProbabilities, tailProbabilities } from './tail-probabilities';

export type ObservedExpected = {
  readonly kind: 'estimate';
  /** Observed over expected; 1 = as expected. */
  readonly estimate: number;
  /** Mid-P limits, the ones to show: close to the level on average. */
  readonly interval: Interval;
  /** Exact (Garwood) limits: never cover less than the level, and more than it for small counts. */
  readonly exactInterval: Interval;
  /** Byar's closed form, within a few per cent of the exact limits. */
  readonly byarInterval: Interval;
  readonly tails: TailProbabilities;
  /** Every count no more likely than the one seen. */
  readonly twoSidedLeastLikely: number;
  readonly observed: number;
  readonly expected: number;
  readonly method: string;
};

/**
 * Ratio of an observed count of events to the count a reference leads to expect, the observed one taken as Poisson.
 *
 * Exact limits of the mean: gamma quantiles of shape O and O + 1 (Garwood 1936, Biometrika 28, 437-442). Byar's
 * approximation: Breslow & Day (1987, Statistical Methods in Cancer Research II, 69). Mid-P: the mean at which the
 * tail less half of P(X = O) is (1 - level) / 2. Sources from memory. At O = 0 all lower limits are 0.
 *
 * The expected count is taken as known. Where it comes from the same few batches, or units share batches, limits
 * are too narrow: use the funnel with overdispersion or the mixed model.
 *
 * @throws ArgumentError for a count that is no count, an expectation below 0, or a level outside (0, 1).
 */
export function observedExpected(
  observed: number,
  expected: number,
  level: number,
): ObservedExpected | CannotCompute {
  requireCount('observed', observed);
  requireNonNegative('expected', expected);
  requireOpenProbability('level', level);
  if (expected === 0)
    return cannotCompute('zero-denominator', 'No event was expected, so there is no ratio to it.');
  const alpha = 1 - level;
  const interval = (low: number, high: number, method: string): Interval => ({
    kind: 'interval',
    low: low / expected,
    high: high / expected,
    level,
    method,
  });
  const z = normalQuantile(1 - alpha / 2);
  return {
    kind: 'estimate',
    estimate: observed / expected,
    interval: interval(
      observed === 0 ? 0 : midPoissonMean(observed, alpha / 2, 'upper'),
      midPoissonMean(observed, alpha / 2, 'lower'),
      'mid-P Poisson',
    ),
    exactInterval: interval(
      observed === 0 ? 0 : gammaQuantile(alpha / 2, observed),
      gammaQuantile(1 - alpha / 2, observed + 1),
      'exact Poisson',
    ),
    byarInterval: interval(byar(observed, -z), byar(observed + 1, z), "Byar's approximation"),
    tails: tailProbabilities(
      poissonCdf(observed, expected),
      observed === 0 ? 1 : poissonSurvival(observed - 1, expected),
      poissonDensity(observed, expected),
    ),
    twoSidedLeastLikely: leastLikelyTail(observed, {
      mean: expected,
      largest: Number.POSITIVE_INFINITY,
      density: (k) => poissonDensity(k, expected),
      cdf: (k) => (k < 0 ? 0 : poissonCdf(k, expected)),
      survival: (k) => (k < 0 ? 1 : poissonSurvival(k, expected)),
    }),
    observed,
    expected,
    method: 'observed over expected, Poisson',
  };
}

function byar(count: number, z: number): number {
  return count === 0 ? 0 : count * (1 - 1 / (9 * count) + z / (3 * Math.sqrt(count))) ** 3;
}
