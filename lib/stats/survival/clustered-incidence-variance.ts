import { elementAt } from '../element-at';
import { type CannotCompute, cannotCompute } from '../outcome';
import { byCluster, type FollowUp } from './follow-up';
import { groupCounts } from './group-counts';
import { incidenceInfluence } from './incidence-influence';
import type { LifeTable } from './life-table';

export type ClusteredVariance = {
  readonly kind: 'variance';
  /** Variance of the cumulative incidence: variances[row][cause]. */
  readonly variances: readonly (readonly number[])[];
  readonly clusters: number;
};

/**
 * Variance of the cumulative incidence when units of a cluster (a treatment run) are not independent: the squared
 * infinitesimal jackknife of each cluster, summed and multiplied by G / (G - 1).
 *
 * @returns `too-few-clusters` below two clusters: between one cluster and nothing there is no spread.
 * @throws ArgumentError when a follow-up names no cluster.
 */
export function clusteredIncidenceVariance(
  followUps: readonly FollowUp[],
  table: LifeTable,
): ClusteredVariance | CannotCompute {
  const groups = [...byCluster(followUps.filter(({ count = 1 }) => count > 0)).values()];
  if (groups.length < 2) {
    return cannotCompute(
      'too-few-clusters',
      'All units share one treatment run, so their spread cannot be judged.',
    );
  }
  const correction = groups.length / (groups.length - 1);
  const variances = table.rows.map(() => table.causes.map(() => 0));
  for (const group of groups) {
    incidenceInfluence(table, groupCounts(table, group)).forEach((values, row) => {
      const sums = elementAt(variances, row);
      values.forEach((value, cause) => {
        sums[cause] = elementAt(sums, cause) + correction * value * value;
      });
    });
  }
  return { kind: 'variance', variances, clusters: groups.length };
}
