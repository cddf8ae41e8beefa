import { requireProbability } from '../check-argument';
import { requireDegreesOfFreedom, requireNumber } from './argument';
import { betaLogOdds } from './beta-log-odds';
import { incompleteBeta } from './incomplete-beta';
import { logNormalSurvival, normalCdf, normalQuantile, normalSurvival } from './normal';
import { flip, type Tails, tailsFromLogUpper } from './tails';

/*
 * Student's t distribution with df > 0 degrees of freedom (not only whole ones); df = Infinity is the standard
 * normal. P(|T| > t) = I_x(df / 2, 1 / 2) with x = df / (df + t^2) (Abramowitz & Stegun 1964, 26.7.1).
 * ArgumentError for NaN or df that is not above 0.
 */

/** From here on the difference from the normal is below what a double resolves. */
const AS_GOOD_AS_NORMAL = 1e15;

/** P(T <= x). */
export function tCdf(x: number, df: number): number {
  return tails(x, df).lower;
}

/** P(T > x). The two-sided p-value of a statistic t is 2 tSurvival(|t|, df). */
export function tSurvival(x: number, df: number): number {
  return tails(x, df).upper;
}

/** log P(T <= x). */
export function logTCdf(x: number, df: number): number {
  return tails(x, df).logLower;
}

/** log P(T > x). */
export function logTSurvival(x: number, df: number): number {
  return tails(x, df).logUpper;
}

/** The x with P(T <= x) = p; infinite at p = 0 and 1, and where it is beyond the range of a double. */
export function tQuantile(p: number, df: number): number {
  requireProbability('p', p);
  requireDegreesOfFreedom('df', df);
  if (df >= AS_GOOD_AS_NORMAL) return normalQuantile(p);
  if (p === 0.5) return 0;
  const twoTails = 2 * Math.min(p, 1 - p);
  const between = 2 * Math.abs(p - 0.5);
  const logTwoTails = twoTails < 0.5 ? Math.log(twoTails) : Math.log1p(-between);
  const logBetween = twoTails < 0.5 ? Math.log1p(-twoTails) : Math.log(between);
  const size = Math.sqrt(df) * Math.exp(-betaLogOdds(logTwoTails, logBetween, df / 2, 0.5) / 2);
  return p < 0.5 ? -size : size;
}

/** The x with P(T > x) = p. */
export function tUpperQuantile(p: number, df: number): number {
  return 0 - tQuantile(p, df);
}

function tails(x: number, df: number): Tails {
  requireNumber('x', x);
  requireDegreesOfFreedom('df', df);
  if (df >= AS_GOOD_AS_NORMAL || Number.isFinite(x) === false) {
    return {
      lower: normalCdf(x),
      upper: normalSurvival(x),
      logLower: logNormalSurvival(-x),
      logUpper: logNormalSurvival(x),
    };
  }
  const ratio = x / Math.sqrt(df);
  const odds = ratio * ratio;
  // Beyond 1e150 the square overflows; there df / (df + t^2) is the squared reciprocal to all digits.
  const outside = Math.abs(ratio) > 1e150 ? (1 / ratio) ** 2 : 1 / (1 + odds);
  const inside = Math.abs(ratio) > 1e150 ? 1 : odds / (1 + odds);
  const twoTails = incompleteBeta(df / 2, 0.5, outside, inside);
  const upper = tailsFromLogUpper(twoTails.logLower - Math.LN2);
  return x < 0 ? flip(upper) : upper;
}
