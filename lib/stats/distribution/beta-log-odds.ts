import { incompleteBeta, logBetaKernel } from './incomplete-beta';
import { increasingRoot } from './increasing-root';

/** Log-odds beyond which one of x and 1 - x is no normal double. */
const FURTHEST = 744;

/**
 * The log-odds u = log(x / (1 - x)) of a beta(a, b) quantile, from log p and log(1 - p) of its lower tail. In
 * this form both x and 1 - x keep full relative accuracy. -Infinity or Infinity beyond the range of a double.
 */
export function betaLogOdds(logLower: number, logUpper: number, a: number, b: number): number {
  if (logLower === Number.NEGATIVE_INFINITY) return Number.NEGATIVE_INFINITY;
  if (logUpper === Number.NEGATIVE_INFINITY) return Number.POSITIVE_INFINITY;
  const smallLower = logLower <= logUpper;
  const evaluate = (u: number) => {
    const x = proportion(u);
    const y = proportion(-u);
    const at = incompleteBeta(a, b, x, y);
    const logTail = smallLower ? at.logLower : at.logUpper;
    const value = smallLower ? logTail - logLower : logUpper - logTail;
    return { value, slope: Math.exp(logBetaKernel(a, b, x, y) - logTail) };
  };
  const u = increasingRoot(evaluate, Math.log(a / b), -FURTHEST, FURTHEST);
  if (u <= -FURTHEST + 1e-9) return Number.NEGATIVE_INFINITY;
  return u >= FURTHEST - 1e-9 ? Number.POSITIVE_INFINITY : u;
}

/** 1 / (1 + exp(-u)). */
export function proportion(u: number): number {
  if (u >= 0) return 1 / (1 + Math.exp(-u));
  const odds = Math.exp(u);
  return odds / (1 + odds);
}
