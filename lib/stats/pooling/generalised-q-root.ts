import { findRoot } from '../find-root';
import type { SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

/**
 * The between-site variance at which Q(tau2) = sum((estimate - mean)^2 / (variance + tau2)), which falls as tau2
 * grows, comes down to `target` > 0; 0 when it is below `target` at tau2 = 0.
 */
export function generalisedQRoot(sites: readonly SiteEstimate[], target: number): number {
  const excess = (tau2: number) => weightedMean(sites, tau2).q - target;
  if (excess(0) <= 0) return 0;
  // Q(tau2) is at most sum of squares / tau2, so it is below the target here.
  const { mean } = weightedMean(sites, 0);
  let above = sites.reduce((sum, { estimate }) => sum + (estimate - mean) ** 2, 0) / target;
  while (excess(above) > 0) above *= 2;
  return findRoot(excess, 0, above);
}
