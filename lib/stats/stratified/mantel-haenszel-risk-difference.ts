import { requireOpenProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { type CannotCompute, cannotCompute } from '../outcome';
import type { StratifiedEstimate } from './stratified-result';
import { occupiedTables, type Stratum, sumTables, type Table } from './stratum';

/** Which variance: Sato's holds for few large and many small strata; Greenland-Robins' for few large ones only. */
export type RiskDifferenceVariance = 'sato' | 'greenland-robins';

const methodNames: Readonly<Record<RiskDifferenceVariance, string>> = {
  sato: 'Mantel-Haenszel risk difference, Sato variance',
  'greenland-robins': 'Mantel-Haenszel risk difference, Greenland-Robins variance',
};

/**
 * Mantel-Haenszel common risk difference, group 1 minus group 2, as a fraction (-1 to 1):
 * sum((a n2 - c n1) / n) / sum(w) with weights w = n1 n2 / n.
 *
 * Variances: Sato, Greenland & Robins (1989, Biometrics 45, 1323-1324) or Greenland & Robins (1985, Biometrics
 * 41, 55-68), both from memory. Limits estimate +- z se; they can leave -1 to 1 with very few units.
 *
 * Units are taken as independent within a stratum.
 *
 * @param level confidence level, 0-1.
 * @returns the difference, or `not-identifiable` when no stratum holds both groups.
 * @throws ArgumentError for impossible counts, duplicated labels or a level outside (0, 1).
 */
export function mantelHaenszelRiskDifference(
  strata: readonly Stratum[],
  level: number,
  variance: RiskDifferenceVariance = 'sato',
): StratifiedEstimate | CannotCompute {
  requireOpenProbability('level', level);
  const tables = occupiedTables(strata);
  const shared = tables.filter(({ n1, n2 }) => n1 > 0 && n2 > 0);
  const weight = sumTables(shared, ({ n1, n2, n }) => (n1 * n2) / n);
  if (weight === 0) {
    return cannotCompute(
      'not-identifiable',
      'No stratum holds both groups, so they cannot be compared within one.',
    );
  }
  const estimate = sumTables(shared, ({ a, c, n1, n2, n }) => (a * n2 - c * n1) / n) / weight;
  const scaled = variance === 'sato' ? satoSum(shared, estimate) : greenlandRobinsSum(shared);
  const standardError = Math.sqrt(Math.max(0, scaled)) / weight;
  const reach = normalQuantile(0.5 + level / 2) * standardError;
  const method = methodNames[variance];
  return {
    kind: 'estimate',
    estimate,
    standardError,
    interval: { kind: 'interval', low: estimate - reach, high: estimate + reach, level, method },
    method,
    units: sumTables(shared, ({ n }) => n),
    strata: tables.length,
    informativeStrata: tables.filter((table) => table.informative).length,
  };
}

function satoSum(tables: readonly Table[], estimate: number): number {
  const p = sumTables(
    tables,
    ({ a, c, n1, n2, n }) => (n1 * n1 * c - n2 * n2 * a + (n1 * n2 * (n2 - n1)) / 2) / (n * n),
  );
  const q = sumTables(tables, ({ a, b, c, d, n }) => (a * d + c * b) / (2 * n));
  return estimate * p + q;
}

function greenlandRobinsSum(tables: readonly Table[]): number {
  return sumTables(
    tables,
    ({ a, b, c, d, n1, n2, n }) => (a * b * n2 ** 3 + c * d * n1 ** 3) / (n1 * n2 * n * n),
  );
}
