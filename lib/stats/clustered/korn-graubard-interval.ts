import { requireOpenProbability } from '../check-argument';
import { betaQuantile, betaUpperQuantile } from '../distribution/beta';
import { tUpperQuantile } from '../distribution/student-t';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';

export type KornGraubardInterval = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly interval: Interval;
  readonly method: string;
  readonly effectiveTrials: number;
};

/**
 * The exact (Clopper-Pearson) interval with the effective number of units p (1 - p) / se^2, made smaller by the squared
 * ratio of the t quantiles with trials - 1 and clusters - 1 degrees of freedom. Conservative with few clusters.
 *
 * One cluster, the same outcome throughout, no units, or no spread between clusters: a reason.
 * Source: Korn & Graubard (1998), Survey Methodology 24:193-201 (citation from memory).
 * @throws ArgumentError as clusterCounts, or when the level is out of range.
 */
export function kornGraubardInterval(
  rows: ClusteredRows & { readonly level: number },
): KornGraubardInterval | CannotCompute {
  requireOpenProbability('level', rows.level);
  const { clusters } = clusterCounts(rows);
  if (clusters.length === 0) {
    return cannotCompute('no-data', 'There are no units to take a proportion of.');
  }
  const { estimate, trials, variance, designEffect } = linearisedProportion(clusters);
  if (typeof variance !== 'number') return variance;
  if (typeof designEffect !== 'number') return designEffect;
  if (variance === 0) {
    return cannotCompute(
      'no-variation',
      'All groups have the same proportion, so no spread was seen at all.',
    );
  }
  const tail = (1 - rows.level) / 2;
  const ratio = tUpperQuantile(tail, trials - 1) / tUpperQuantile(tail, clusters.length - 1);
  const effectiveTrials = ((estimate * (1 - estimate)) / variance) * ratio ** 2;
  const events = effectiveTrials * estimate;
  const others = effectiveTrials * (1 - estimate);
  return {
    kind: 'estimate',
    estimate,
    interval: {
      kind: 'interval',
      low: betaQuantile(tail, events, others + 1),
      high: betaUpperQuantile(tail, events + 1, others),
      level: rows.level,
      method: 'Korn-Graubard exact with effective size',
    },
    method: 'clustered proportion, Korn-Graubard',
    effectiveTrials,
  };
}
