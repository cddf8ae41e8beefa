import { requireOpenProbability } from '../check-argument';
import type { CannotCompute } from '../outcome';
import { mantelHaenszelRatio } from './mantel-haenszel-ratio';
import type { StratifiedEstimate } from './stratified-result';
import { occupiedTables, type Stratum, sumTables } from './stratum';

/**
 * Mantel-Haenszel common odds ratio of group 1 against group 2: R / S with R = sum(a d / n), S = sum(b c / n),
 * a, b the events and non-events of group 1, c, d those of group 2 in a stratum of n units.
 *
 * Variance of the logarithm by Robins, Breslow & Greenland (1986, Biometrics 42, 311-323, from memory), which
 * holds for few large and for many small strata; limits exp(log(OR) +- z se).
 *
 * Units are taken as independent within a stratum. For units in batches use the mixed model instead.
 *
 * @param level confidence level, 0-1.
 * @returns the ratio (0 or Infinity without interval when a group has no event or no non-event), or the reason
 *   why there is none: no stratum with both groups, or no event at all.
 * @throws ArgumentError for impossible counts, duplicated labels or a level outside (0, 1).
 */
export function mantelHaenszelOddsRatio(
  strata: readonly Stratum[],
  level: number,
): StratifiedEstimate | CannotCompute {
  requireOpenProbability('level', level);
  const tables = occupiedTables(strata);
  const r = sumTables(tables, ({ a, d, n }) => (a * d) / n);
  const s = sumTables(tables, ({ b, c, n }) => (b * c) / n);
  const logVariance = () => {
    const pr = sumTables(tables, ({ a, d, n }) => (((a + d) / n) * a * d) / n);
    const ps = sumTables(tables, ({ a, b, c, d, n }) => (((a + d) / n) * b * c) / n);
    const qr = sumTables(tables, ({ a, b, c, d, n }) => (((b + c) / n) * a * d) / n);
    const qs = sumTables(tables, ({ b, c, n }) => (((b + c) / n) * b * c) / n);
    return pr / (2 * r * r) + (ps + qr) / (2 * r * s) + qs / (2 * s * s);
  };
  const method = 'Mantel-Haenszel odds ratio, Robins-Breslow-Greenland variance';
  return mantelHaenszelRatio(tables, { numerator: r, denominator: s, logVariance }, level, method);
}
