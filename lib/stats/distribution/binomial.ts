import { requireCount, requireFinite, requireProbability } from '../check-argument';
import { requireNumber } from './argument';
import { logBeta } from './beta';
import { incompleteBeta } from './incomplete-beta';
import { devianceTerm, stirlingError } from './saddle-point';
import { QUANTILE_FUZZ, smallestCount } from './smallest-count';
import { ALL_ABOVE, ALL_BELOW, flip, type Tails } from './tails';

/*
 * The binomial distribution: events among n independent trials of probability p.
 * In the cumulative functions k may be any number and is rounded down, so that k = -1 is allowed and has
 * probability 0. ArgumentError for NaN, n that is no count, or p outside 0..1.
 */

const TWO_PI = 6.283185307179586;

/** P(X = k); 0 for k outside 0..n. */
export function binomialDensity(k: number, n: number, p: number): number {
  return Math.exp(logBinomialDensity(k, n, p));
}

/** log P(X = k), -Infinity where it is 0. Loader's saddle-point expansion. */
export function logBinomialDensity(k: number, n: number, p: number): number {
  requireNumber('k', k);
  requireCount('n', n);
  requireProbability('p', p);
  if (k < 0 || k > n || !Number.isInteger(k)) return Number.NEGATIVE_INFINITY;
  return logBinomialTerm(k, n - k, p, 1 - p);
}

/** log of (a+b)! / (a! b!) p^a q^b for counts a and b, with q = 1 - p given. */
export function logBinomialTerm(a: number, b: number, p: number, q: number): number {
  if (a === 0) return b === 0 ? 0 : b * (p < q ? Math.log1p(-p) : Math.log(q));
  if (b === 0) return a * (q < p ? Math.log1p(-q) : Math.log(p));
  if (p === 0 || q === 0) return Number.NEGATIVE_INFINITY;
  const n = a + b;
  return (
    stirlingError(n) -
    stirlingError(a) -
    stirlingError(b) -
    devianceTerm(a, n * p) -
    devianceTerm(b, n * q) -
    0.5 * Math.log(TWO_PI * a * (b / n))
  );
}

/** P(X <= k). */
export function binomialCdf(k: number, n: number, p: number): number {
  return tails(k, n, p).lower;
}

/** P(X > k). */
export function binomialSurvival(k: number, n: number, p: number): number {
  return tails(k, n, p).upper;
}

/** log P(X <= k). */
export function logBinomialCdf(k: number, n: number, p: number): number {
  return tails(k, n, p).logLower;
}

/** log P(X > k). */
export function logBinomialSurvival(k: number, n: number, p: number): number {
  return tails(k, n, p).logUpper;
}

/** The smallest k with P(X <= k) >= p, where `prob` is the probability of an event. */
export function binomialQuantile(p: number, n: number, prob: number): number {
  requireProbability('p', p);
  return smallestCount(0, n, (k) => binomialCdf(k, n, prob) >= p * (1 - QUANTILE_FUZZ));
}

/** The smallest k with P(X > k) <= p, where `prob` is the probability of an event. */
export function binomialUpperQuantile(p: number, n: number, prob: number): number {
  requireProbability('p', p);
  return smallestCount(0, n, (k) => binomialSurvival(k, n, prob) <= p * (1 + QUANTILE_FUZZ));
}

/** log of n! / (k! (n - k)!); -Infinity when k is outside 0..n. */
export function logBinomialCoefficient(n: number, k: number): number {
  requireCount('n', n);
  requireFinite('k', k);
  if (k < 0 || k > n || !Number.isInteger(k)) return Number.NEGATIVE_INFINITY;
  const fewer = Math.min(k, n - k);
  if (fewer === 0) return 0;
  if (fewer === 1) return Math.log(n);
  return -Math.log(n + 1) - logBeta(n - fewer + 1, fewer + 1);
}

function tails(k: number, n: number, p: number): Tails {
  requireNumber('k', k);
  requireCount('n', n);
  requireProbability('p', p);
  const whole = Math.floor(k);
  if (whole < 0) return ALL_ABOVE;
  if (whole >= n || p === 0) return ALL_BELOW;
  if (p === 1) return ALL_ABOVE;
  return flip(incompleteBeta(whole + 1, n - whole, p, 1 - p));
}
