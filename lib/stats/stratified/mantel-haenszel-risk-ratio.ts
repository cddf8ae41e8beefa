import { requireOpenProbability } from '../check-argument';
import type { CannotCompute } from '../outcome';
import { mantelHaenszelRatio } from './mantel-haenszel-ratio';
import type { StratifiedEstimate } from './stratified-result';
import { occupiedTables, type Stratum, sumTables } from './stratum';

/**
 * Mantel-Haenszel common risk ratio of group 1 against group 2: sum(a n2 / n) / sum(c n1 / n).
 *
 * Variance of the logarithm by Greenland & Robins (1985, Biometrics 41, 55-68, from memory):
 * sum((n1 n2 m - a c n) / n^2) / (R S) with m the events of the stratum; the bracket is written as
 * a^2 d + c^2 b + b d m, which cannot cancel. Limits exp(log(RR) +- z se).
 *
 * Units are taken as independent within a stratum.
 *
 * @param level confidence level, 0-1.
 * @returns the ratio (0 or Infinity without interval when one group has no event), or why there is none.
 * @throws ArgumentError for impossible counts, duplicated labels or a level outside (0, 1).
 */
export function mantelHaenszelRiskRatio(
  strata: readonly Stratum[],
  level: number,
): StratifiedEstimate | CannotCompute {
  requireOpenProbability('level', level);
  const tables = occupiedTables(strata);
  const r = sumTables(tables, ({ a, n2, n }) => (a * n2) / n);
  const s = sumTables(tables, ({ c, n1, n }) => (c * n1) / n);
  const logVariance = () =>
    sumTables(tables, ({ a, b, c, d, events, n }) => (a * a * d + c * c * b + b * d * events) / (n * n)) /
    (r * s);
  const method = 'Mantel-Haenszel risk ratio, Greenland-Robins variance';
  return mantelHaenszelRatio(tables, { numerator: r, denominator: s, logVariance }, level, method);
}
