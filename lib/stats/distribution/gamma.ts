import { requirePositive, requireProbability } from '../check-argument';
import { requireNumber } from './argument';
import { incompleteGamma, logGammaKernel } from './incomplete-gamma';
import { increasingRoot } from './increasing-root';
import { logGamma } from './log-gamma';

export { digamma, trigamma } from './digamma';
export { logGamma } from './log-gamma';

/*
 * The gamma distribution with shape > 0 and scale 1: density x^(shape-1) exp(-x) / gamma(shape) on x > 0.
 * A point outside the support has probability 0 or 1. ArgumentError for NaN or a shape that is not above 0.
 */

/** P(X <= x), the regularised incomplete gamma function P(shape, x). */
export function gammaCdf(x: number, shape: number): number {
  return tails(x, shape).lower;
}

/** P(X > x) = Q(shape, x). */
export function gammaSurvival(x: number, shape: number): number {
  return tails(x, shape).upper;
}

/** log P(X <= x). */
export function logGammaCdf(x: number, shape: number): number {
  return tails(x, shape).logLower;
}

/** log P(X > x). */
export function logGammaSurvival(x: number, shape: number): number {
  return tails(x, shape).logUpper;
}

/** The x with P(X <= x) = p; 0 at p = 0 (and where x underflows), Infinity at p = 1. */
export function gammaQuantile(p: number, shape: number): number {
  requireProbability('p', p);
  return quantile(p, 1 - p, Math.log(p), Math.log1p(-p), shape);
}

/** The x with P(X > x) = p, accurate for p far smaller than 1e-16. */
export function gammaUpperQuantile(p: number, shape: number): number {
  requireProbability('p', p);
  return quantile(1 - p, p, Math.log1p(-p), Math.log(p), shape);
}

function tails(x: number, shape: number) {
  requireNumber('x', x);
  requirePositive('shape', shape);
  return incompleteGamma(shape, x);
}

/** Solves for u = log x on the logarithm of the smaller tail. */
function quantile(lower: number, upper: number, logLower: number, logUpper: number, shape: number): number {
  requirePositive('shape', shape);
  if (logLower === Number.NEGATIVE_INFINITY) return 0;
  if (logUpper === Number.NEGATIVE_INFINITY) return Number.POSITIVE_INFINITY;
  const smallLower = lower <= upper;
  const evaluate = (u: number) => {
    const x = Math.exp(u);
    const at = incompleteGamma(shape, x);
    const logTail = smallLower ? at.logLower : at.logUpper;
    const value = smallLower ? logTail - logLower : logUpper - logTail;
    return { value, slope: Math.exp(logGammaKernel(shape, x) - logTail) };
  };
  // Small x: P = x^shape / gamma(shape + 1) to first order. Otherwise start at the mean.
  const smallStart = (logLower + logGamma(shape + 1)) / shape;
  const start = smallLower ? Math.min(smallStart, Math.log(shape + 1)) : Math.log(shape + 1);
  // P(X > shape + sqrt(2 shape t) + t) <= exp(-t) (Laurent & Massart 2000, from memory), and no double is below exp(-746).
  const furthest = Math.log(shape + Math.sqrt(2 * shape * 746) + 746);
  const u = increasingRoot(evaluate, start, -745, furthest);
  return u <= -745 ? 0 : Math.exp(u);
}
