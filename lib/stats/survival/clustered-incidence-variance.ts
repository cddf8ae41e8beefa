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
  /** Degrees of freedom behind each variance, from 1 to clusters - 1. */
  readonly degreesOfFreedom: readonly (readonly number[])[];
  /** Units watched at each row, counted for what they are worth as independent ones; see WORST_CORRELATION. */
  readonly watched: readonly number[];
  readonly clusters: number;
};

/**
 * Before the first event nothing says how alike units of a cluster are. They are then taken to correlate by this
 * much, the top of the range that the intervals are calibrated for.
 */
const WORST_CORRELATION = 0.3;

/**
 * Variance of the cumulative incidence when units of a cluster (a treatment run) are not independent: the squared
 * infinitesimal jackknife of each cluster, over (1 - its share of the units)^2 because the cluster drew the estimate
 * to itself, summed, times (G - 1) / G. For clusters of one size that is the usual G / (G - 1).
 *
 * Where few clusters carry most of the variance it is known less well than G - 1 degrees of freedom pretend. They
 * are taken as 3 (sum q)^2 / sum q^2 - 1, q the clusters' terms, between 1 and G - 1: normal scores give G - 1, a few
 * bad runs among many clean ones give few. The rule was found by simulation; CALIBRATION.md has what it covers.
 *
 * @returns `too-few-clusters` below two clusters: between one cluster and nothing there is no spread.
 * @throws ArgumentError when a follow-up names no cluster.
 */
export function clusteredIncidenceVariance(
  followUps: readonly FollowUp[],
  table: LifeTable,
): ClusteredVariance | CannotCompute {
  const groups = [...byCluster(followUps.filter(({ count = 1 }) => count > 0)).values()];
  const clusters = groups.length;
  if (clusters < 2) {
    return cannotCompute(
      'too-few-clusters',
      'All units share one treatment run, so their spread cannot be judged.',
    );
  }
  const zeros = () => table.rows.map(() => table.causes.map(() => 0));
  const [variances, squares] = [zeros(), zeros()];
  const watched = table.rows.map(() => 0);
  for (const group of groups) {
    const size = group.reduce((sum, { count = 1 }) => sum + count, 0);
    const correction = (clusters - 1) / clusters / (1 - size / table.units) ** 2;
    const counts = groupCounts(table, group);
    counts.atRisk.forEach((units, row) => {
      if (units > 0) watched[row] = elementAt(watched, row) + units / (1 + (units - 1) * WORST_CORRELATION);
    });
    incidenceInfluence(table, counts).forEach((values, row) => {
      const [sums, squareSums] = [elementAt(variances, row), elementAt(squares, row)];
      values.forEach((value, cause) => {
        const term = correction * value * value;
        sums[cause] = elementAt(sums, cause) + term;
        squareSums[cause] = elementAt(squareSums, cause) + term * term;
      });
    });
  }
  const degreesOfFreedom = variances.map((sums, row) =>
    sums.map((sum, cause) => {
      const square = elementAt(elementAt(squares, row), cause);
      const carried = square > 0 ? (3 * sum * sum) / square - 1 : clusters - 1;
      return Math.min(clusters - 1, Math.max(1, carried));
    }),
  );
  return { kind: 'variance', variances, degreesOfFreedom, watched, clusters };
}
