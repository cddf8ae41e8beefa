import { normalCdf } from '../distribution/normal';
import { findRoot } from '../find-root';
import type { WeightedCorrelation } from './correlation-weights';

/**
 * Score limits of a clustered proportion, averaged over its intra-cluster correlation: the values p at which
 * sum over rho of weight * Phi((p - estimate) / sqrt(p (1 - p) D(rho) / trials)) reaches `tail` and 1 - tail, where
 * D(rho) = 1 + (size - 1) rho is the design effect. With one rho for certain they are Wilson's limits of the effective
 * size trials / D. 0 at no events and 1 at all events.
 *
 * @param sizeMetByUnit sum of cluster sizes squared over their sum.
 */
export function averagedScoreLimits(
  events: number,
  trials: number,
  sizeMetByUnit: number,
  correlations: readonly WeightedCorrelation[],
  tail: number,
): { low: number; high: number } {
  const estimate = events / trials;
  const scales = correlations.map(({ correlation, weight }) => ({
    weight,
    root: Math.sqrt((1 + (sizeMetByUnit - 1) * correlation) / trials),
  }));
  /** In the angle whose squared sine is p, which keeps digits at both ends. */
  const confidence = (angle: number) => {
    const p = Math.sin(angle) ** 2;
    const binary = Math.sin(angle) * Math.cos(angle);
    return scales.reduce(
      (sum, { weight, root }) => sum + weight * normalCdf((p - estimate) / (binary * root)),
      0,
    );
  };
  const furthest = Math.PI / 2;
  const limit = (share: number) =>
    Math.sin(findRoot((angle) => confidence(angle) - share, 1e-12, furthest - 1e-12)) ** 2;
  return {
    low: events === 0 ? 0 : limit(tail),
    high: events === trials ? 1 : limit(1 - tail),
  };
}
