import { type CannotCompute, cannotCompute } from '../outcome';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

export type FixedEffect = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly standardError: number;
  readonly sites: number;
  readonly method: 'inverse-variance mean, sites taken to share one value';
};

/**
 * Inverse-variance weighted mean, right only when all sites share one true value. Kept as a yardstick: sites of a
 * network differ, so show the random-effects mean.
 */
export function fixedEffect(sites: readonly SiteEstimate[]): FixedEffect | CannotCompute {
  checkSiteEstimates(sites);
  if (sites.length === 0) return cannotCompute('no-data', 'There are no sites to pool.');
  const { mean, sumOfWeights } = weightedMean(sites, 0);
  return {
    kind: 'estimate',
    estimate: mean,
    standardError: Math.sqrt(1 / sumOfWeights),
    sites: sites.length,
    method: 'inverse-variance mean, sites taken to share one value',
  };
}
