import { requireCount, requireFinite, requireNonNegative } from '../check-argument';
import { marginalMoments } from '../mixed/binomial/marginal-moments';
import { ArgumentError } from '../outcome';

/** One batch as a binomial mixed model sees it: its units, its log odds at random effect 0, and what it shares. */
export type ExpectedBatch = {
  readonly units: number;
  readonly logit: number;
  /** Batches with the same label share a run's effect. */
  readonly run: string;
  /** Labels of what else batches share, one for each of `LogitSpread.crossed`. */
  readonly crossed?: readonly string[];
};

/**
 * Variances on the logit scale: shared by all batches given, by the batches of one run, by none, and by the batches with
 * the same label of each crossed level (for instance of one spawn lot).
 */
export type LogitSpread = {
  readonly shared: number;
  readonly run: number;
  readonly batch: number;
  readonly crossed?: readonly number[];
};

type Weights = { readonly sum: number; readonly squares: number };

/**
 * Mean and variance of the count of events over several batches, given a binomial mixed model: the probabilities are
 * averaged over the random effects, and units that share a batch, a run or the whole group rise and fall together.
 *
 * With total variance s2 = shared + run + batch + crossed levels, m_i and v_i the mean and variance of batch i's probability,
 * mean = sum n_i m_i and variance = sum n_i m_i (1 - m_i) + n_i (n_i - 1) v_i, plus for each pair of batches
 * n_i n_j r_ij sqrt(v_i v_j), where r_ij = (shared + run if of one run + each crossed level that both have the label of) / s2: the correlation of the two on the logit
 * scale, carried over to the probabilities (an approximation; close while s2 is below about 2).
 *
 * @param batches units are whole numbers of at least 0; rows of one run need not be adjacent.
 * Levels other than runs may cross each other; a batch without a label of a level throws.
 *
 * @returns mean and variance of the count; both 0 without batches.
 * @throws ArgumentError for units that are no count, a log odds that is not finite, or a negative variance.
 */
export function expectedClusteredCount(
  batches: readonly ExpectedBatch[],
  spread: LogitSpread,
): { readonly expected: number; readonly variance: number } {
  for (const name of ['shared', 'run', 'batch'] as const) requireNonNegative(name, spread[name]);
  const crossed = spread.crossed ?? [];
  for (const [level, part] of crossed.entries()) requireNonNegative(`crossed[${level}]`, part);
  const total = spread.shared + spread.run + spread.batch + crossed.reduce((all, part) => all + part, 0);
  let expected = 0;
  let variance = 0;
  let sum = 0;
  let squares = 0;
  const levels = [spread.run, ...crossed].map((part) => ({ part, groups: new Map<string, Weights>() }));
  batches.forEach(({ units, logit, run, crossed: others = [] }, row) => {
    if (others.length !== crossed.length)
      throw new ArgumentError(`batches[${row}].crossed`, `must have ${crossed.length} labels`);
    requireCount(`batches[${row}].units`, units);
    requireFinite(`batches[${row}].logit`, logit);
    const { mean, variance: v } = marginalMoments(logit, total);
    expected += units * mean;
    variance += units * mean * (1 - mean) + units * (units - 1) * v;
    const weight = units * Math.sqrt(v);
    sum += weight;
    squares += weight * weight;
    [run, ...others].forEach((label, level) => {
      const groups = levels[level]?.groups;
      const own = groups?.get(label) ?? { sum: 0, squares: 0 };
      groups?.set(label, { sum: own.sum + weight, squares: own.squares + weight * weight });
    });
  });
  if (total > 0) {
    variance += (spread.shared / total) * (sum * sum - squares);
    for (const { part, groups } of levels)
      for (const own of groups.values()) variance += (part / total) * (own.sum * own.sum - own.squares);
  }
  return { expected, variance };
}
