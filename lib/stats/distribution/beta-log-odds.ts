import { incompleteBeta, logBetaKernel } from './incomplete-beta';
import { increasingRoot } from './increasing-root';
import { logGamma } from './log-gamma';

/** Beyond these log-odds x, or 1 - x, is so small that the leading term of the distribution function is all of it. */
const FURTHEST = 600;
/** Log-odds beyond which x or 1 - x is no normal double. */
const LIMIT = 700;

/**
 * The log-odds u = log(x / (1 - x)) of a beta(a, b) quantile, from log p and log(1 - p) of its lower tail. In
 * this form both x and 1 - x keep full relative accuracy, also beyond the range of a double.
 */
export function betaLogOdds(logLower: number, logUpper: number, a: number, b: number): number {
  if (logLower === Number.NEGATIVE_INFINITY) return Number.NEGATIVE_INFINITY;
  if (logUpper === Number.NEGATIVE_INFINITY) return Number.POSITIVE_INFINITY;
  const atLowEnd = (logLower + logEndFactor(a, b)) / a;
  if (atLowEnd < -FURTHEST) return atLowEnd;
  const atHighEnd = -(logUpper + logEndFactor(b, a)) / b;
  if (atHighEnd > FURTHEST) return atHighEnd;
  const smallLower = logLower <= logUpper;
  const evaluate = (u: number) => {
    const x = proportion(u);
    const y = proportion(-u);
    const at = incompleteBeta(a, b, x, y);
    const logTail = smallLower ? at.logLower : at.logUpper;
    const value = smallLower ? logTail - logLower : logUpper - logTail;
    return { value, slope: Math.exp(logBetaKernel(a, b, x, y) - logTail) };
  };
  return increasingRoot(evaluate, Math.log(a / b), -LIMIT, LIMIT);
}

/** log(a B(a, b)): next to 0 the distribution function is x^a over this factor, and x equals its odds. */
function logEndFactor(a: number, b: number): number {
  return logGamma(a + 1) + logGamma(b) - logGamma(a + b);
}

/** 1 / (1 + exp(-u)). */
export function proportion(u: number): number {
  if (u >= 0) return 1 / (1 + Math.exp(-u));
  const odds = Math.exp(u);
  return odds / (1 + odds);
}
