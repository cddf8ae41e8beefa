import { requireNonNegative, requireOpenProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import type { Interval } from '../outcome';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

export type ShrunkenEstimate = {
  readonly kind: 'estimate';
  readonly label: string;
  readonly estimate: number;
  readonly standardError: number;
  readonly interval: Interval;
  /** How far the site's own estimate is drawn to the mean: variance / (variance + tau2), 0-1. */
  readonly shrinkage: number;
  readonly method: string;
};

/**
 * Best linear unbiased predictions of the sites' true values: mean + (1 - B)(estimate - mean), B = variance /
 * (variance + tau2), with standard error sqrt((1 - B) variance + B^2 se(mean)^2). Small sites are drawn to the mean,
 * so that the highest and lowest of a list are not merely the smallest.
 *
 * The between-site variance is taken as known. Source: Robinson (1991, Statistical Science 6, 15-32, from memory).
 *
 * @param betweenVariance from `betweenVariance`, at least 0. @param level confidence level, 0-1.
 */
export function shrunkenEstimates(
  sites: readonly SiteEstimate[],
  betweenVariance: number,
  level: number,
): ShrunkenEstimate[] {
  checkSiteEstimates(sites);
  requireNonNegative('betweenVariance', betweenVariance);
  requireOpenProbability('level', level);
  const { mean, sumOfWeights } = weightedMean(sites, betweenVariance);
  const z = normalQuantile(0.5 + level / 2);
  return sites.map(({ label, estimate, variance }) => {
    const shrinkage = variance / (variance + betweenVariance);
    const shrunken = mean + (1 - shrinkage) * (estimate - mean);
    const standardError = Math.sqrt((1 - shrinkage) * variance + shrinkage ** 2 / sumOfWeights);
    const method = 'best linear unbiased prediction';
    return {
      kind: 'estimate',
      label,
      estimate: shrunken,
      standardError,
      interval: {
        kind: 'interval',
        low: shrunken - z * standardError,
        high: shrunken + z * standardError,
        level,
        method,
      },
      shrinkage,
      method,
    };
  });
}
