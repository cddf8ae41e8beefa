import { normalQuantile } from '../distribution/normal';
import { type CannotCompute, cannotCompute } from '../outcome';
import type { StratifiedEstimate } from './stratified-result';
import type { Table } from './stratum';

/** The two sums of a Mantel-Haenszel ratio and the variance of its logarithm. */
type RatioParts = {
  readonly numerator: number;
  readonly denominator: number;
  /** Variance of the logarithm; asked for only when both sums are above 0. */
  readonly logVariance: () => number;
};

/**
 * A ratio numerator / denominator with limits on the log scale by the normal quantile.
 * With a sum of 0 the ratio is 0 or infinite and has no interval; with both 0 nothing can be compared.
 */
export function mantelHaenszelRatio(
  tables: readonly Table[],
  parts: RatioParts,
  level: number,
  method: string,
): StratifiedEstimate | CannotCompute {
  const { numerator, denominator } = parts;
  if (numerator === 0 && denominator === 0) {
    return cannotCompute(
      'not-identifiable',
      'No stratum holds both groups with an event to compare, so there is no common ratio.',
    );
  }
  const described = {
    kind: 'estimate',
    method,
    units: tables.reduce((sum, table) => sum + (table.n1 > 0 && table.n2 > 0 ? table.n : 0), 0),
    strata: tables.length,
    informativeStrata: tables.filter((table) => table.informative).length,
  } as const;
  if (numerator === 0 || denominator === 0) {
    const nothing = cannotCompute(
      'separation',
      'One of the groups has no event, so the ratio has no limits.',
    );
    return {
      ...described,
      estimate: numerator === 0 ? 0 : Number.POSITIVE_INFINITY,
      standardError: nothing,
      interval: nothing,
    };
  }
  const estimate = numerator / denominator;
  const standardError = Math.sqrt(parts.logVariance());
  const reach = normalQuantile(0.5 + level / 2) * standardError;
  return {
    ...described,
    estimate,
    standardError,
    interval: {
      kind: 'interval',
      low: estimate * Math.exp(-reach),
      high: estimate * Math.exp(reach),
      level,
      method,
    },
  };
}
