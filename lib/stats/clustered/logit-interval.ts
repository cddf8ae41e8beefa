import { requireOpenProbability } from '../check-argument';
import { proportion } from '../distribution/beta-log-odds';
import { tUpperQuantile } from '../distribution/student-t';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';

/**
 * The t(k-1) interval of a clustered proportion on the logit scale: logit p -+ t se / (p (1 - p)), carried back.
 *
 * One cluster, the same outcome throughout, or no units: a reason. Clusters that all have the same proportion give
 * an interval without width.
 * Source: Korn & Graubard (1999), Analysis of Health Surveys, section 3.2 (from memory).
 * @throws ArgumentError as clusterCounts, or when the level is out of range.
 */
export function logitInterval(rows: ClusteredRows & { readonly level: number }): Interval | CannotCompute {
  requireOpenProbability('level', rows.level);
  const { clusters } = clusterCounts(rows);
  if (clusters.length === 0) {
    return cannotCompute('no-data', 'There are no units to take a proportion of.');
  }
  const { estimate, variance, designEffect } = linearisedProportion(clusters);
  if (typeof variance !== 'number') return variance;
  if (typeof designEffect !== 'number') return designEffect;
  const centre = Math.log(estimate / (1 - estimate));
  const standardError = Math.sqrt(variance) / (estimate * (1 - estimate));
  const half = tUpperQuantile((1 - rows.level) / 2, clusters.length - 1) * standardError;
  return {
    kind: 'interval',
    low: proportion(centre - half),
    high: proportion(centre + half),
    level: rows.level,
    method: 't on the logit scale',
  };
}
