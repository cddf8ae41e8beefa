import type { ClusterCount } from './cluster-counts';
import { risingLogsOf } from './rising-logs';

/**
 * The beta-binomial log-likelihood of all clusters, without the binomial coefficients, as a function first of the
 * intra-cluster correlation rho (0 <= rho < 1) and then of the proportion mu (0 < mu < 1): what hangs on rho alone is
 * worked out once for many mu.
 */
export function profileOfCounts(clusters: readonly ClusterCount[]): (rho: number) => (mu: number) => number {
  const events = risingLogsOf(clusters.map((cluster) => cluster.events));
  const others = risingLogsOf(clusters.map((cluster) => cluster.trials - cluster.events));
  const trials = risingLogsOf(clusters.map((cluster) => cluster.trials));
  return (rho) => {
    const theta = rho / (1 - rho);
    const all = trials(1, theta);
    return (mu) => events(mu, theta) + others(1 - mu, theta) - all;
  };
}
