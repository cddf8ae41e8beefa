import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { averagedScoreLimits } from './averaged-score-limits';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { correlationWeights } from './correlation-weights';
import { linearisedProportion } from './linearised-proportion';

export type ClusteredProportion = {
  readonly kind: 'estimate';
  /** events / trials, 0-1. */
  readonly estimate: number;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  readonly events: number;
  readonly trials: number;
  readonly rows: number;
  /** Clusters with units. */
  readonly clusters: number;
  /** Clusters left out because they have no units. */
  readonly emptyClusters: number;
  /** Linearised, cluster-robust. */
  readonly standardError: number | CannotCompute;
  /** Variance over that of as many independent units; a reason with one cluster or the same outcome throughout. */
  readonly designEffect: number | CannotCompute;
  /** How many independent units would say as much, as the interval takes it: trials over its mean design effect. */
  readonly effectiveTrials: number | CannotCompute;
};

const ONE_CLUSTER = cannotCompute(
  'too-few-clusters',
  'All the units come from one independent group, so how far the figure could be off cannot be told.',
);

/**
 * The proportion of clustered units (such as contaminated bags in batches), with its design effect and the shipped
 * interval for clustered proportions: Wilson's score interval with an effective size, averaged over what the clusters
 * say about their intra-cluster correlation (correlation-weights.ts, averaged-score-limits.ts).
 *
 * It lies about the estimate and within 0..1, has width at no and at all events, and allows for the correlation being
 * itself uncertain, which an interval from one estimated design effect does not. With 3 to 60 clusters of 4 to 36 units, rates of 1 to
 * 40 % and correlations up to 0.3 a nominal 95 % interval covered 92 % or more; where units are in truth independent, or
 * clusters are few, it is wider than need be and covers 97 to 100 %. Figures: calibration table.
 *
 * One cluster: the estimate with a reason in place of the interval. No units: a reason.
 * Source: score interval with effective size, Rao & Scott (1992), Biometrics 48:577-585; beta-binomial likelihood,
 * Williams (1975), Biometrics 31:949-952 (citations from memory). Averaging over the correlation and the weight it is
 * given beforehand are ours.
 *
 * @param rows events and trials per row with the cluster of each; rows of one cluster are added up. Without `cluster`
 *   every row is its own cluster. `level` is two-sided, 0 < level < 1; 0.95 unless told.
 * @throws ArgumentError when lists differ in length, a value is no count, a row has more events than trials, or the
 *   level is out of range.
 */
export function clusteredProportion(
  rows: ClusteredRows & { readonly level?: number },
): ClusteredProportion | CannotCompute {
  const { level = 0.95 } = rows;
  requireOpenProbability('level', level);
  const { clusters, emptyClusters } = clusterCounts(rows);
  if (clusters.length === 0) {
    return cannotCompute('no-data', 'There are no units to take a proportion of.');
  }
  const { events, trials, estimate, variance, designEffect, sizeMetByUnit } = linearisedProportion(clusters);
  const about = {
    estimate,
    method: 'ratio of sums over clusters',
    events,
    trials,
    rows: rows.events.length,
    clusters: clusters.length,
    emptyClusters,
    standardError: typeof variance === 'number' ? Math.sqrt(variance) : variance,
    designEffect,
  };
  if (clusters.length < 2) {
    return { kind: 'estimate', ...about, interval: ONE_CLUSTER, effectiveTrials: ONE_CLUSTER };
  }
  const correlations = correlationWeights(clusters);
  const tail = (1 - level) / 2;
  const meanEffect = correlations.reduce(
    (sum, { correlation, weight }) => sum + weight * (1 + (sizeMetByUnit - 1) * correlation),
    0,
  );
  return {
    kind: 'estimate',
    ...about,
    effectiveTrials: trials / meanEffect,
    interval: {
      kind: 'interval',
      ...averagedScoreLimits(events, trials, sizeMetByUnit, correlations, tail),
      level,
      method: 'Wilson score with effective size, averaged over the correlation within groups',
    },
  };
}
