import type { ClusterCount } from './cluster-counts';

export type ClusterSpread = {
  readonly events: number;
  readonly trials: number;
  /** events / trials. */
  readonly estimate: number;
  /** 0 with one cluster, where it says nothing. */
  readonly variance: number;
  /** Between 1 and clusters - 1; 1 with one cluster. */
  readonly degreesOfFreedom: number;
};

/**
 * The proportion of clustered units with the variance of the delete-one-cluster jackknife about the estimate:
 * v = (k-1)/k sum q_i, q_i = ((x_i - p n_i) / (N - n_i))^2. Larger than the linearised variance where one cluster
 * holds much of the units and so draws the estimate to itself.
 *
 * Where few clusters carry most of the variance it is known less well than k - 1 degrees of freedom pretend. They are
 * taken as 3 (sum q)^2 / sum q^2 - 1, between 1 and k - 1: normal residuals give about k - 1, a few bad clusters among
 * many clean ones give few. The rule was found by simulation; CALIBRATION.md has what it covers.
 *
 * @param clusters at least one, each with trials above 0.
 */
export function clusterSpread(clusters: readonly ClusterCount[]): ClusterSpread {
  const k = clusters.length;
  let events = 0;
  let trials = 0;
  for (const cluster of clusters) {
    events += cluster.events;
    trials += cluster.trials;
  }
  const estimate = events / trials;
  if (k < 2) return { events, trials, estimate, variance: 0, degreesOfFreedom: 1 };
  let sum = 0;
  let squares = 0;
  for (const cluster of clusters) {
    const term = ((cluster.events - estimate * cluster.trials) / (trials - cluster.trials)) ** 2;
    sum += term;
    squares += term * term;
  }
  const carried = squares > 0 ? (3 * sum * sum) / squares - 1 : k - 1;
  const degreesOfFreedom = Math.min(k - 1, Math.max(1, carried));
  return { events, trials, estimate, variance: ((k - 1) / k) * sum, degreesOfFreedom };
}
