import type { SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

/**
 * Moment estimate of the between-site variance: max(0, (Q - (k - 1)) / (sum w - sum w^2 / sum w)), w = 1 / variance.
 * Source: DerSimonian & Laird (1986, Controlled Clinical Trials 7, 177-188, from memory).
 */
export function dersimonianLaird(sites: readonly SiteEstimate[]): number {
  const { q, sumOfWeights, sumOfSquaredWeights } = weightedMean(sites, 0);
  const spread = sumOfWeights - sumOfSquaredWeights / sumOfWeights;
  return spread > 0 ? Math.max(0, (q - (sites.length - 1)) / spread) : 0;
}
