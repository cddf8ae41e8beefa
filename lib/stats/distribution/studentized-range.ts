import { requireCount, requireNonNegative, requireProbability } from '../check-argument';
import { ArgumentError } from '../outcome';
import { requireDegreesOfFreedom } from './argument';
import { logChiSquareScaleDensity } from './chi-square-scale';
import { increasingRoot } from './increasing-root';
import { normalRange } from './normal-range';
import { meanOverScaleByPanels } from './scale-by-panels';
import { tUpperQuantile } from './student-t';

/*
 * Tukey's studentised range: the range of `means` independent standard normals over an independent estimate s of
 * their standard deviation with df degrees of freedom. df = Infinity is the range of the normals itself.
 *
 * P(Q <= q) is the mean of P(range <= q s) over s = chi(df) / sqrt(df); normal-range.ts has the inner integral.
 * From 2 degrees of freedom on the mean is taken by the published rule (scale-by-panels.ts), so that adjusted p-values are
 * those of other programs (R 4.2.2 within 1e-7). That rule is off where df is small: P by up to 7e-4 (two means) to
 * 3e-3 (twenty) at df = 2, mostly beyond q = 20, and the upper 1 % point by 1 % (two means, too near) to 10 % (ten means,
 * too far out); by up to 6e-4 at 3, 4e-5 at 5, 2e-6 at 8, 3e-7 at 10 (measured for 2 to 20 means, q up to 200). Below 2, where it fails, the mean is taken by the trapezoidal rule in log s, which
 * converges geometrically; so are upper tails below 1e-6, where 1 - P would have no digits left.
 * Source of the two integrals: Copenhaver & Holland (1988), "Computation of the distribution of the maximum
 * studentized range statistic", J. Statist. Comput. Simul. 30:1-15 (citation from memory).
 */

/** P(Q <= q) for q >= 0, means >= 2, df > 0. ArgumentError otherwise. */
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
  if (df > 25_000) return normalRange(q, means);
  if (df < 2) return averageInLogs(q, means, df);
  const within = Math.min(
    1,
    meanOverScaleByPanels((s) => normalRange(q * s, means).within, df),
  );
  return 1 - within > 1e-6 ? { within, beyond: 1 - within } : averageInLogs(q, means, df);
}

function averageInLogs(q: number, means: number, df: number): Share {
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
