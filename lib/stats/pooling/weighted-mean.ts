import type { SiteEstimate } from './site-estimate';

/** Sums of a mean weighted by w = 1 / (variance + tau2), the same between-site variance tau2 for all. */
export type WeightedMean = {
  readonly mean: number;
  /** w of each site. */
  readonly weights: readonly number[];
  readonly sumOfWeights: number;
  readonly sumOfSquaredWeights: number;
  /** sum(w (estimate - mean)^2): Cochran's Q, generalised to tau2 > 0. */
  readonly q: number;
  /** sum(w^2 (estimate - mean)^2). */
  readonly squaredWeightQ: number;
};

export function weightedMean(sites: readonly SiteEstimate[], betweenVariance: number): WeightedMean {
  const weights = sites.map(({ variance }) => 1 / (variance + betweenVariance));
  const pairs = sites.map(({ estimate, variance }) => ({ estimate, w: 1 / (variance + betweenVariance) }));
  let sumOfWeights = 0;
  let sumOfSquaredWeights = 0;
  let weighted = 0;
  for (const { estimate, w } of pairs) {
    sumOfWeights += w;
    sumOfSquaredWeights += w * w;
    weighted += w * estimate;
  }
  const mean = weighted / sumOfWeights;
  let q = 0;
  let squaredWeightQ = 0;
  for (const { estimate, w } of pairs) {
    const distance = (estimate - mean) ** 2;
    q += w * distance;
    squaredWeightQ += w * w * distance;
  }
  return { mean, weights, sumOfWeights, sumOfSquaredWeights, q, squaredWeightQ };
}
