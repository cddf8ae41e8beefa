import { requirePositive, requireProbability } from '../check-argument';
import { requireDegreesOfFreedom, requireNumber } from './argument';
import { betaLogOdds } from './beta-log-odds';
import { chiSquareQuantile } from './chi-square';
import { incompleteBeta } from './incomplete-beta';
import { incompleteGamma } from './incomplete-gamma';
import { ALL_ABOVE, ALL_BELOW, type Tails } from './tails';

/*
 * The F distribution with d1 numerator and d2 denominator degrees of freedom, both > 0; d2 = Infinity gives
 * chi-square over d1. P(F <= x) = I_u(d1 / 2, d2 / 2) with u = d1 x / (d1 x + d2)
 * (Abramowitz & Stegun 1964, 26.6.2). ArgumentError for NaN or degrees of freedom out of range.
 */

/** P(F <= x). */
export function fCdf(x: number, d1: number, d2: number): number {
  return tails(x, d1, d2).lower;
}

/** P(F > x): the p-value of an F statistic. */
export function fSurvival(x: number, d1: number, d2: number): number {
  return tails(x, d1, d2).upper;
}

/** log P(F <= x). */
export function logFCdf(x: number, d1: number, d2: number): number {
  return tails(x, d1, d2).logLower;
}

/** log P(F > x). */
export function logFSurvival(x: number, d1: number, d2: number): number {
  return tails(x, d1, d2).logUpper;
}

/** The x with P(F <= x) = p; Infinity at p = 1. */
export function fQuantile(p: number, d1: number, d2: number): number {
  requireProbability('p', p);
  return quantile(Math.log(p), Math.log1p(-p), p, d1, d2);
}

/** The x with P(F > x) = p, accurate for p far smaller than 1e-16. */
export function fUpperQuantile(p: number, d1: number, d2: number): number {
  requireProbability('p', p);
  return quantile(Math.log1p(-p), Math.log(p), 1 - p, d1, d2);
}

function tails(x: number, d1: number, d2: number): Tails {
  requireNumber('x', x);
  requirePositive('d1', d1);
  requireDegreesOfFreedom('d2', d2);
  if (x <= 0) return ALL_ABOVE;
  if (x === Number.POSITIVE_INFINITY) return ALL_BELOW;
  if (d2 === Number.POSITIVE_INFINITY) return incompleteGamma(d1 / 2, (d1 * x) / 2);
  const odds = (d1 / d2) * x;
  return incompleteBeta(d1 / 2, d2 / 2, 1 / (1 + 1 / odds), 1 / (1 + odds));
}

function quantile(logLower: number, logUpper: number, p: number, d1: number, d2: number): number {
  requirePositive('d1', d1);
  requireDegreesOfFreedom('d2', d2);
  if (d2 === Number.POSITIVE_INFINITY) return chiSquareQuantile(p, d1) / d1;
  return (d2 / d1) * Math.exp(betaLogOdds(logLower, logUpper, d1 / 2, d2 / 2));
}
