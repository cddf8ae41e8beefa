import { chiSquareSurvival } from '../distribution/chi-square';
import { type CannotCompute, cannotCompute } from '../outcome';
import type { StratifiedTest } from './stratified-result';
import { occupiedTables, type Stratum, sumTables } from './stratum';

/**
 * Cochran-Mantel-Haenszel test that group and outcome are independent within every stratum:
 * (|sum(a) - sum(E a)| - correction)^2 / sum(Var a), 1 df, with the hypergeometric mean n1 m / n and variance
 * n1 n2 m (n - m) / (n^2 (n - 1)). Strata of one unit say nothing and are left out.
 *
 * The continuity correction is 0.5, and 0 when |sum(a) - sum(E a)| is below 0.5.
 * Source: Mantel & Haenszel (1959, J Natl Cancer Inst 22, 719-748, from memory).
 *
 * @returns the test, or `no-variation` when no stratum holds both groups and both outcomes.
 * @throws ArgumentError for impossible counts or duplicated labels.
 */
export function cochranMantelHaenszel(
  strata: readonly Stratum[],
  continuityCorrection: boolean,
): StratifiedTest | CannotCompute {
  const tables = occupiedTables(strata);
  const usable = tables.filter(({ n }) => n > 1);
  const variance = sumTables(
    usable,
    ({ n1, n2, events, nonEvents, n }) => ((n1 * n2) / (n * n)) * ((events * nonEvents) / (n - 1)),
  );
  if (variance === 0) {
    return cannotCompute(
      'no-variation',
      'No stratum holds both groups and both outcomes, so there is nothing to test.',
    );
  }
  const excess = Math.abs(sumTables(usable, ({ a, n1, events, n }) => a - (n1 * events) / n));
  const correction = continuityCorrection && excess >= 0.5 ? 0.5 : 0;
  const statistic = (excess - correction) ** 2 / variance;
  return {
    kind: 'test',
    statistic,
    degreesOfFreedom: 1,
    pValue: chiSquareSurvival(statistic, 1),
    method: continuityCorrection
      ? 'Cochran-Mantel-Haenszel test with continuity correction'
      : 'Cochran-Mantel-Haenszel test',
    strata: tables.length,
    informativeStrata: tables.filter((table) => table.informative).length,
  };
}
