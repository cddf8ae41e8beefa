import { requireCount, requireNonNegative, requireProbability } from '../check-argument';
import { ArgumentError } from '../outcome';
import { requireDegreesOfFreedom } from './argument';
import { logChiSquareScaleDensity } from './chi-square-scale';
import { increasingRoot } from './increasing-root';
import { normalRange } from './normal-range';
import { tUpperQuantile } from './student-t';

/*
 * Tukey's studentised range: the range of `means` independent standard normals over an independent estimate s of
 * their standard deviation with df degrees of freedom. df = Infinity is the range of the normals itself.
 *
 * P(Q <= q) is the mean of P(range <= q s) over s = chi(df) / sqrt(df), by the trapezoidal rule in log s, which
 * converges geometrically for this integrand; see normal-range.ts for the inner integral.
 * Source of the two integrals: Copenhaver & Holland (1988), "Computation of the distribution of the maximum
 * studentized range statistic", J. Statist. Comput. Simul. 30:1-15 (citation from memory).
 */

/** P(Q <= q) for q >= 0, means >= 2, df > 0; error about 1e-12. ArgumentError otherwise. */
export function tukeyCdf(q: number, means: number, df: number): number {
  return average(q, means, df).within;
}

/** P(Q > q), the adjusted p-value of a pairwise comparison; small values keep their relative accuracy. */
export function tukeySurvival(q: number, means: number, df: number): number {
  return average(q, means, df).beyond;
}

/** The q with P(Q <= q) = p; 0 at p = 0, Infinity at p = 1. */
export function tukeyQuantile(p: number, means: number, df: number): number {
  requireProbability('p', p);
  return quantile(p, 1 - p, means, df);
}

/** The q with P(Q > q) = p, accurate for p far smaller than 1e-16. */
export function tukeyUpperQuantile(p: number, means: number, df: number): number {
  requireProbability('p', p);
  return quantile(1 - p, p, means, df);
}

function quantile(lower: number, upper: number, means: number, df: number): number {
  requireArguments(0, means, df);
  if (lower === 0) return 0;
  if (upper === 0) return Number.POSITIVE_INFINITY;
  const distance = (u: number) => {
    const { within, beyond } = average(Math.exp(u), means, df);
    return lower <= upper ? Math.log(within / lower) : Math.log(upper / beyond);
  };
  const evaluate = (u: number) => {
    const value = distance(u);
    return { value, slope: (distance(u + 1e-5) - value) / 1e-5 };
  };
  // Bonferroni's bound on the pairs, exact for two means.
  const start = Math.log(Math.SQRT2 * tUpperQuantile(upper / (means * (means - 1)), df));
  return Math.exp(increasingRoot(evaluate, start, -80, 300, 1e-11));
}

type Share = { readonly within: number; readonly beyond: number };

function average(q: number, means: number, df: number): Share {
  requireArguments(q, means, df);
  if (q === 0) return { within: 0, beyond: 1 };
  if (df === Number.POSITIVE_INFINITY) return normalRange(q, means);
  // The density of log s has its top at 0 and falls off within a few times 1 / sqrt(2 df) where df is large.
  const step = Math.min(0.14, 0.65 / Math.sqrt(2 * df));
  let within = 0;
  let beyond = 0;
  let weight = 0;
  const add = (u: number): boolean => {
    const density = Math.exp(logChiSquareScaleDensity(u, df));
    const share = normalRange(q * Math.exp(u), means);
    within += density * share.within;
    beyond += density * share.beyond;
    weight += density;
    return density * share.within > 1e-16 * within || density * share.beyond > 1e-16 * beyond;
  };
  add(0);
  for (let u = step; add(u); u += step);
  for (let u = -step; add(u); u -= step);
  return { within: within / weight, beyond: beyond / weight };
}

function requireArguments(q: number, means: number, df: number): void {
  requireNonNegative('q', q);
  requireCount('means', means);
  if (means < 2) throw new ArgumentError('means', `must be at least 2, not ${means}`);
  requireDegreesOfFreedom('df', df);
}
