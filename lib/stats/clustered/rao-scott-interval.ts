import { requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { wilsonLimits } from '../proportion/wilson-limits';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';

export type RaoScottInterval = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly interval: Interval;
  readonly method: string;
  /** Events and trials over the design effect. */
  readonly effectiveEvents: number;
  readonly effectiveTrials: number;
  readonly designEffect: number;
};

/**
 * Wilson's score interval for events and trials divided by the estimated design effect. With `floor` a design effect
 * below 1, which with few clusters is mostly chance, counts as 1.
 *
 * It takes the design effect as known, so that with few clusters it covers less than its level; the shipped
 * interval is clusteredProportion's. One cluster, the same outcome throughout, no units, or a design effect of 0
 * that is not floored: a reason.
 * Source: Rao & Scott (1992), Biometrics 48:577-585.
 * @throws ArgumentError as clusterCounts, or when the level is out of range.
 */
export function raoScottInterval(
  rows: ClusteredRows & { readonly level: number; readonly floor: boolean },
): RaoScottInterval | CannotCompute {
  requireOpenProbability('level', rows.level);
  const { clusters } = clusterCounts(rows);
  if (clusters.length === 0) {
    return cannotCompute('no-data', 'There are no units to take a proportion of.');
  }
  const { estimate, events, trials, designEffect: found } = linearisedProportion(clusters);
  if (typeof found !== 'number') return found;
  const designEffect = rows.floor ? Math.max(1, found) : found;
  if (designEffect === 0) {
    return cannotCompute(
      'no-variation',
      'All groups have the same proportion, so no spread was seen at all.',
    );
  }
  const effectiveEvents = events / designEffect;
  const effectiveTrials = trials / designEffect;
  const z = normalUpperQuantile((1 - rows.level) / 2);
  return {
    kind: 'estimate',
    estimate,
    interval: {
      kind: 'interval',
      ...wilsonLimits(effectiveEvents, effectiveTrials, z),
      level: rows.level,
      method: 'Wilson score with effective size',
    },
    method: 'clustered proportion, Rao-Scott',
    effectiveEvents,
    effectiveTrials,
    designEffect,
  };
}
