import { requirePositive, requireProbability } from '../check-argument';
import { requireNumber } from './argument';
import { betaLogOdds, proportion } from './beta-log-odds';
import { incompleteBeta } from './incomplete-beta';
import { logGamma, stirlingSeries } from './log-gamma';

/*
 * The beta distribution on 0 <= x <= 1 with shapes a, b > 0: density x^(a-1) (1-x)^(b-1) / B(a, b).
 * A point outside the support has probability 0 or 1. ArgumentError for NaN or a shape that is not above 0.
 */

const LOG_SQRT_TWO_PI = 0.9189385332046728;

/** P(X <= x), the regularised incomplete beta function I_x(a, b). */
export function betaCdf(x: number, a: number, b: number): number {
  return tails(x, a, b).lower;
}

/** P(X > x). */
export function betaSurvival(x: number, a: number, b: number): number {
  return tails(x, a, b).upper;
}

/** log P(X <= x). */
export function logBetaCdf(x: number, a: number, b: number): number {
  return tails(x, a, b).logLower;
}

/** log P(X > x). */
export function logBetaSurvival(x: number, a: number, b: number): number {
  return tails(x, a, b).logUpper;
}

/** The x with P(X <= x) = p. */
export function betaQuantile(p: number, a: number, b: number): number {
  requireProbability('p', p);
  return quantile(Math.log(p), Math.log1p(-p), a, b);
}

/** The x with P(X > x) = p, accurate for p far smaller than 1e-16. */
export function betaUpperQuantile(p: number, a: number, b: number): number {
  requireProbability('p', p);
  return quantile(Math.log1p(-p), Math.log(p), a, b);
}

/**
 * log B(a, b) = log gamma(a) + log gamma(b) - log gamma(a + b), with the large parts of the log gammas cancelled
 * by hand where both or one of the arguments are large.
 */
export function logBeta(a: number, b: number): number {
  requirePositive('a', a);
  requirePositive('b', b);
  const small = Math.min(a, b);
  const large = Math.max(a, b);
  if (large < 9) return logGamma(small) + logGamma(large) - logGamma(a + b);
  const correction = stirlingSeries(large) - stirlingSeries(a + b);
  if (small < 9) {
    // log gamma(large) - log gamma(large + small) by Stirling's formula
    const ratio = -(large - 0.5) * Math.log1p(small / large) + small - small * Math.log(a + b);
    return logGamma(small) + correction + ratio;
  }
  return (
    LOG_SQRT_TWO_PI -
    0.5 * Math.log(large) +
    stirlingSeries(small) +
    correction +
    (small - 0.5) * Math.log(small / (a + b)) -
    large * Math.log1p(small / large)
  );
}

function tails(x: number, a: number, b: number) {
  requireNumber('x', x);
  requirePositive('a', a);
  requirePositive('b', b);
  return incompleteBeta(a, b, x, 1 - x);
}

function quantile(logLower: number, logUpper: number, a: number, b: number): number {
  requirePositive('a', a);
  requirePositive('b', b);
  return proportion(betaLogOdds(logLower, logUpper, a, b));
}
