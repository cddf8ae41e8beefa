import { requireNonNegative, requireProbability } from '../check-argument';
import { requireNumber } from './argument';
import { incompleteGamma } from './incomplete-gamma';
import { devianceTerm, stirlingError } from './saddle-point';
import { QUANTILE_FUZZ, smallestCount } from './smallest-count';
import { ALL_ABOVE, ALL_BELOW, flip, type Tails } from './tails';

/*
 * The Poisson distribution with the given mean >= 0.
 * In the cumulative functions k may be any number and is rounded down. ArgumentError for NaN or a bad mean.
 */

const TWO_PI = 6.283185307179586;

/** P(X = k); 0 when k is no count. */
export function poissonDensity(k: number, mean: number): number {
  return Math.exp(logPoissonDensity(k, mean));
}

/** log P(X = k), -Infinity where it is 0. Loader's saddle-point expansion. */
export function logPoissonDensity(k: number, mean: number): number {
  requireNumber('k', k);
  requireNonNegative('mean', mean);
  if (k < 0 || !Number.isInteger(k)) return Number.NEGATIVE_INFINITY;
  if (k === 0) return -mean;
  if (mean === 0) return Number.NEGATIVE_INFINITY;
  return -stirlingError(k) - devianceTerm(k, mean) - 0.5 * Math.log(TWO_PI * k);
}

/** P(X <= k). */
export function poissonCdf(k: number, mean: number): number {
  return tails(k, mean).lower;
}

/** P(X > k). */
export function poissonSurvival(k: number, mean: number): number {
  return tails(k, mean).upper;
}

/** log P(X <= k). */
export function logPoissonCdf(k: number, mean: number): number {
  return tails(k, mean).logLower;
}

/** log P(X > k). */
export function logPoissonSurvival(k: number, mean: number): number {
  return tails(k, mean).logUpper;
}

/** The smallest k with P(X <= k) >= p; Infinity at p = 1 unless the mean is 0. */
export function poissonQuantile(p: number, mean: number): number {
  requireProbability('p', p);
  requireNonNegative('mean', mean);
  if (p === 1) return mean === 0 ? 0 : Number.POSITIVE_INFINITY;
  return smallestFrom(mean, (k) => poissonCdf(k, mean) >= p * (1 - QUANTILE_FUZZ));
}

/** The smallest k with P(X > k) <= p; Infinity at p = 0 unless the mean is 0. */
export function poissonUpperQuantile(p: number, mean: number): number {
  requireProbability('p', p);
  requireNonNegative('mean', mean);
  if (p === 0) return mean === 0 ? 0 : Number.POSITIVE_INFINITY;
  return smallestFrom(mean, (k) => poissonSurvival(k, mean) <= p * (1 + QUANTILE_FUZZ));
}

function smallestFrom(mean: number, reached: (k: number) => boolean): number {
  let high = Math.ceil(mean) + 8;
  while (!reached(high)) high *= 2;
  return smallestCount(0, high, reached);
}

function tails(k: number, mean: number): Tails {
  requireNumber('k', k);
  requireNonNegative('mean', mean);
  const whole = Math.floor(k);
  if (whole < 0) return ALL_ABOVE;
  if (whole === Number.POSITIVE_INFINITY) return ALL_BELOW;
  return flip(incompleteGamma(whole + 1, mean));
}
