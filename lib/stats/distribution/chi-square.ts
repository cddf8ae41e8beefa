import { requirePositive } from '../check-argument';
import {
  gammaCdf,
  gammaQuantile,
  gammaSurvival,
  gammaUpperQuantile,
  logGammaCdf,
  logGammaSurvival,
} from './gamma';

/*
 * The chi-square distribution with df > 0 degrees of freedom (not only whole ones): twice a gamma of shape df / 2.
 * ArgumentError for NaN or df that is not finite and above 0.
 */

/** P(X <= x). */
export function chiSquareCdf(x: number, df: number): number {
  requirePositive('df', df);
  return gammaCdf(x / 2, df / 2);
}

/** P(X > x): the p-value of a chi-square statistic. */
export function chiSquareSurvival(x: number, df: number): number {
  requirePositive('df', df);
  return gammaSurvival(x / 2, df / 2);
}

/** log P(X <= x). */
export function logChiSquareCdf(x: number, df: number): number {
  requirePositive('df', df);
  return logGammaCdf(x / 2, df / 2);
}

/** log P(X > x). */
export function logChiSquareSurvival(x: number, df: number): number {
  requirePositive('df', df);
  return logGammaSurvival(x / 2, df / 2);
}

/** The x with P(X <= x) = p; Infinity at p = 1. */
export function chiSquareQuantile(p: number, df: number): number {
  requirePositive('df', df);
  return 2 * gammaQuantile(p, df / 2);
}

/** The x with P(X > x) = p. */
export function chiSquareUpperQuantile(p: number, df: number): number {
  requirePositive('df', df);
  return 2 * gammaUpperQuantile(p, df / 2);
}
