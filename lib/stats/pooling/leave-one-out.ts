import type { CannotCompute } from '../outcome';
import { cannotCompute } from '../outcome';
import type { BetweenVarianceEstimator } from './between-variance';
import { type PooledMean, pooledMean } from './pooled-mean';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';

/** The pooled mean without the site of this label. */
export type WithoutSite = { readonly label: string; readonly pooled: PooledMean | CannotCompute };

/**
 * The pooled mean with each site left out in turn, to show whether one site carries the answer. Needs three sites,
 * so that two remain to differ.
 */
export function leaveOneOut(
  sites: readonly SiteEstimate[],
  estimator: BetweenVarianceEstimator,
  level: number,
): WithoutSite[] {
  checkSiteEstimates(sites);
  return sites.map(({ label }, left) => ({
    label,
    pooled:
      sites.length > 2
        ? pooledMean(
            sites.filter((_, index) => index !== left),
            estimator,
            level,
          )
        : cannotCompute('too-few-observations', 'Leaving one site out needs at least three sites.'),
  }));
}
