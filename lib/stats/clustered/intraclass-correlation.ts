import { type CannotCompute, cannotCompute } from '../outcome';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';

/**
 * The analysis-of-variance estimate of the intra-cluster correlation of binary units:
 * (MSB - MSW) / (MSB + (n0 - 1) MSW), n0 = (N - sum n_i^2 / N) / (k - 1). Can be negative.
 *
 * Fewer than 2 clusters, clusters of one unit only, the same outcome throughout, or no units: a reason.
 * Source: Donner (1986), International Statistical Review 54:67-82 (citation from memory).
 * @throws ArgumentError as clusterCounts.
 */
export function intraclassCorrelation(rows: ClusteredRows): number | CannotCompute {
  const { clusters } = clusterCounts(rows);
  if (clusters.length === 0) return cannotCompute('no-data', 'There are no units.');
  const k = clusters.length;
  const { estimate, trials, sizeMetByUnit, designEffect } = linearisedProportion(clusters);
  if (typeof designEffect !== 'number') return designEffect;
  if (trials === k) {
    return cannotCompute(
      'not-identifiable',
      'Groups of one unit cannot show how alike units of a group are.',
    );
  }
  let between = 0;
  let within = 0;
  for (const { events, trials: n } of clusters) {
    between += n * (events / n - estimate) ** 2;
    within += events * ((n - events) / n);
  }
  const meanBetween = between / (k - 1);
  const meanWithin = within / (trials - k);
  const size = (trials - sizeMetByUnit) / (k - 1);
  return (meanBetween - meanWithin) / (meanBetween + (size - 1) * meanWithin);
}
