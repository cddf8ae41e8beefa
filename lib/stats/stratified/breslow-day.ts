import { chiSquareSurvival } from '../distribution/chi-square';
import { type CannotCompute, cannotCompute } from '../outcome';
import { mantelHaenszelOddsRatio } from './mantel-haenszel-odds-ratio';
import type { StratifiedTest } from './stratified-result';
import { occupiedTables, type Stratum, type Table } from './stratum';

/**
 * Breslow-Day test that the odds ratio is the same in every stratum: sum((a - A)^2 / V) on strata - 1 df, where A
 * is the count that the margins and the Mantel-Haenszel odds ratio imply and
 * V = 1 / (1/A + 1/(n1-A) + 1/(m-A) + 1/(n2-m+A)).
 *
 * Tarone's correction takes off (sum(a) - sum(A))^2 / sum(V) because the Mantel-Haenszel estimate is not fully
 * efficient; use it. Sources: Breslow & Day (1980, Statistical Methods in Cancer Research I, 142), Tarone (1985,
 * Biometrika 72, 91-95), from memory. Only strata with both groups and both outcomes count.
 *
 * @returns the test, or why there is none: fewer than two informative strata, or an odds ratio of 0 or infinity.
 * @throws ArgumentError for impossible counts or duplicated labels.
 */
export function breslowDay(
  strata: readonly Stratum[],
  taroneCorrection: boolean,
): StratifiedTest | CannotCompute {
  const tables = occupiedTables(strata);
  const informative = tables.filter((table) => table.informative);
  if (informative.length < 2) {
    return cannotCompute(
      'too-few-observations',
      'Homogeneity needs at least two strata in which both groups and both outcomes occur.',
    );
  }
  const common = mantelHaenszelOddsRatio(strata, 0.95);
  if (common.kind === 'cannot-compute') return common;
  const oddsRatio = common.estimate;
  if (oddsRatio === 0 || oddsRatio === Number.POSITIVE_INFINITY) {
    return cannotCompute(
      'separation',
      'The common odds ratio is 0 or infinite, so no stratum can differ from it.',
    );
  }
  let statistic = 0;
  let excess = 0;
  let variance = 0;
  for (const table of informative) {
    const fitted = fittedEvents(table, oddsRatio);
    const { n1, n2, events } = table;
    const v = 1 / (1 / fitted + 1 / (n1 - fitted) + 1 / (events - fitted) + 1 / (n2 - events + fitted));
    statistic += (table.a - fitted) ** 2 / v;
    excess += table.a - fitted;
    variance += v;
  }
  if (taroneCorrection) statistic = Math.max(0, statistic - excess ** 2 / variance);
  const degreesOfFreedom = informative.length - 1;
  return {
    kind: 'test',
    statistic,
    degreesOfFreedom,
    pValue: chiSquareSurvival(statistic, degreesOfFreedom),
    method: taroneCorrection ? "Breslow-Day test with Tarone's correction" : 'Breslow-Day test',
    strata: tables.length,
    informativeStrata: informative.length,
  };
}

/**
 * The events of group 1 that give this odds ratio under the table's margins: the root of
 * (psi - 1) A^2 - s A + psi n1 m = 0, s = psi (n1 + m) + n2 - m, that lies inside the margins, written without
 * cancellation.
 */
function fittedEvents({ n1, n2, events }: Table, psi: number): number {
  const s = psi * (n1 + events) + n2 - events;
  const root = Math.sqrt(s * s - 4 * (psi - 1) * psi * n1 * events);
  return s >= 0 ? (2 * psi * n1 * events) / (s + root) : (s - root) / (2 * (psi - 1));
}
