import { type CannotCompute, cannotCompute } from '../outcome';
import type { ClusterCount } from './cluster-counts';

export type LinearisedProportion = {
  readonly clusters: number;
  readonly events: number;
  readonly trials: number;
  /** Sum of trials squared over sum of trials: the size of cluster that a unit meets on average. */
  readonly sizeMetByUnit: number;
  /** events / trials. */
  readonly estimate: number;
  readonly variance: number | CannotCompute;
  /** Variance over that of as many independent units. */
  readonly designEffect: number | CannotCompute;
};

const ONE_CLUSTER = cannotCompute(
  'too-few-clusters',
  'All the units come from one independent group, so how much groups differ cannot be told.',
);
const ALL_ALIKE = cannotCompute(
  'no-variation',
  'Every unit had the same outcome, so how much groups differ cannot be told.',
);

/**
 * The proportion of clustered units as a ratio of sums, with its linearised cluster-robust variance
 * k/(k-1) sum (x_i - p n_i)^2 / (sum n)^2 and the design effect, that variance over p (1 - p) / sum n.
 *
 * One cluster: a reason in place of variance and design effect; no or only events: in place of the design effect.
 * Source: Rao & Scott (1992), "A simple method for the analysis of clustered binary data", Biometrics 48:577-585.
 * @param clusters at least one, each with trials above 0.
 */
export function linearisedProportion(clusters: readonly ClusterCount[]): LinearisedProportion {
  const k = clusters.length;
  let events = 0;
  let trials = 0;
  let sizes = 0;
  for (const cluster of clusters) {
    events += cluster.events;
    trials += cluster.trials;
    sizes += cluster.trials ** 2;
  }
  const estimate = events / trials;
  const about = { clusters: k, events, trials, sizeMetByUnit: sizes / trials, estimate };
  if (k < 2) return { ...about, variance: ONE_CLUSTER, designEffect: ONE_CLUSTER };
  let squares = 0;
  for (const cluster of clusters) squares += (cluster.events - estimate * cluster.trials) ** 2;
  const variance = ((k / (k - 1)) * squares) / trials ** 2;
  const alike = events === 0 || events === trials;
  const designEffect = alike ? ALL_ALIKE : variance / ((estimate * (1 - estimate)) / trials);
  return { ...about, variance, designEffect };
}
