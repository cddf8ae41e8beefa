import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { integratedLimits } from './integrated-interval';
import { linearisedProportion } from './linearised-proportion';

export type ClusteredProportion = {
  readonly kind: 'estimate';
  /** events / trials, 0-1. */
  readonly estimate: number;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  readonly events: number;
  readonly trials: number;
  /** Clusters with units. */
  readonly clusters: number;
  /** Clusters left out because they have no units. */
  readonly emptyClusters: number;
  /** Linearised, cluster-robust. */
  readonly standardError: number | CannotCompute;
  /** Variance over that of as many independent units; a reason with one cluster or the same outcome throughout. */
  readonly designEffect: number | CannotCompute;
  /** Trials over the design effect, where that is at least 1: how many independent units would say as much. */
  readonly effectiveTrials: number | CannotCompute;
};

const ONE_CLUSTER = cannotCompute(
  'too-few-clusters',
  'All the units come from one independent group, so how far the figure could be off cannot be told.',
);

/**
 * The proportion of clustered units (such as contaminated bags in batches), with a design effect and the shipped
 * interval for clustered proportions.
 *
 * The interval comes from the beta-binomial likelihood of the clusters, averaged over the unknown intra-cluster
 * correlation (integrated-interval.ts). It has width at no and at all events, stays within 0..1 and, unlike intervals
 * that take an estimated design effect as known, still covers near its level with 3 clusters; with few clusters it
 * leans on the assumption that correlations are rather small than large (mean 0.25). Where units are independent it is
 * wider than need be, and with a correlation of 0.3 and up to 12 clusters it covers about 90 % instead of 95 %.
 *
 * One cluster: the estimate with a reason in place of the interval. No units: a reason.
 * Source: beta-binomial, Williams (1975), Biometrics 31:949-952; Jeffreys' weight for a proportion, Brown, Cai & DasGupta
 * (2001), Statistical Science 16:101-133; variance and design effect, Rao & Scott (1992), Biometrics 48:577-585
 * (citations from memory). The weight for the correlation is our choice; its coverage is in the calibration table.
 *
 * @param rows events and trials per row with the cluster of each; rows of one cluster are added up. Without `cluster`
 *   every row is its own cluster.
 * @param rows.level two-sided, 0 < level < 1.
 * @throws ArgumentError when lists differ in length, a value is no count, a row has more events than trials, or the
 *   level is out of range.
 */
export function clusteredProportion(
  rows: ClusteredRows & { readonly level: number },
): ClusteredProportion | CannotCompute {
  requireOpenProbability('level', rows.level);
  const { clusters, emptyClusters } = clusterCounts(rows);
  if (clusters.length === 0) {
    return cannotCompute('no-data', 'There are no units to take a proportion of.');
  }
  const { events, trials, estimate, variance, designEffect } = linearisedProportion(clusters);
  return {
    kind: 'estimate',
    estimate,
    interval: clusters.length < 2 ? ONE_CLUSTER : interval(clusters, rows.level),
    method: 'ratio of sums over clusters',
    events,
    trials,
    clusters: clusters.length,
    emptyClusters,
    standardError: typeof variance === 'number' ? Math.sqrt(variance) : variance,
    designEffect,
    effectiveTrials: typeof designEffect === 'number' ? trials / Math.max(1, designEffect) : designEffect,
  };
}

function interval(clusters: Parameters<typeof integratedLimits>[0], level: number): Interval {
  return {
    kind: 'interval',
    ...integratedLimits(clusters, (1 - level) / 2),
    level,
    method: 'beta-binomial likelihood, averaged over the correlation within groups',
  };
}
