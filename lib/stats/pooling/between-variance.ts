import { dersimonianLaird } from './dersimonian-laird';
import { pauleMandel } from './paule-mandel';
import { restrictedLikelihood } from './restricted-likelihood';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';

/** How the variance of true site values is estimated. REML is the choice; Paule-Mandel needs no normality. */
export type BetweenVarianceEstimator = 'dersimonian-laird' | 'reml' | 'paule-mandel';

/**
 * Variance of the sites' true values around their mean (tau^2), in squared units of the estimates; 0 for one site.
 *
 * @throws ArgumentError for estimates or variances out of range.
 */
export function betweenVariance(sites: readonly SiteEstimate[], estimator: BetweenVarianceEstimator): number {
  checkSiteEstimates(sites);
  if (sites.length < 2) return 0;
  switch (estimator) {
    case 'dersimonian-laird':
      return dersimonianLaird(sites);
    case 'reml':
      return restrictedLikelihood(sites);
    case 'paule-mandel':
      return pauleMandel(sites);
  }
}
