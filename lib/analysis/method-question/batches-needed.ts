import { normalQuantile } from '@/lib/stats/distribution/normal';
import { clustersNeeded } from '@/lib/stats/planning/clusters-needed';
import { twoMeansSampleSize } from '@/lib/stats/planning/two-means-sample-size';
import { twoProportionsSampleSize } from '@/lib/stats/planning/two-proportions-sample-size';
import type { CountedBatch } from '../adjusted/contamination-request';
import type { PlainFit } from '../fitting/plain-fit';

/** Differences that would change what a grower does: units in 100, and points of biological efficiency. Our choice. */
export const worthKnowing = { loss: 5, yield: 10 } as const;
const power = 0.8;
const significance = 0.05;

/** Batches of each of two methods that it takes to tell them apart. */
export type BatchesNeeded =
  | { readonly kind: 'of-each'; readonly ofEach: number }
  /** However many there are: what methods do differs too much from site to site for so few sites. */
  | { readonly kind: 'more-sites' }
  /** Nothing to reckon with. */
  | { readonly kind: 'unreckoned' };

export type Judged = {
  /** Sites that use both methods. */
  readonly sites: number;
  /** Pairs that are judged together. The least of their p-values tells by Holm when it is below 0.05 divided by these. */
  readonly pairs: number;
};

export type LossGround = {
  /** A typical rate of the two. */
  readonly percent: number;
  /** Correlation of units of one batch. */
  readonly correlation: number;
  /** By how much methods differ from site to site: variance of the model, on the logit scale. */
  readonly siteByMethod: number;
  readonly batches: readonly CountedBatch[];
};

const strictest = ({ pairs }: Judged) => significance / Math.max(1, pairs);

/**
 * What is left of a difference once the sites' own part of its variance, 2 v / sites, is counted: the difference that batches
 * alone would have to show to be found as often, since n = 2 s^2 z^2 / (d^2 - z^2 2 v / sites). Null where nothing is left.
 */
function leftToBatches(points: number, siteByMethod: number, judged: Judged): number | null {
  const reach = normalQuantile(1 - strictest(judged) / 2) + normalQuantile(power);
  const left = points ** 2 - (reach ** 2 * 2 * siteByMethod) / Math.max(1, judged.sites);
  return left > 0 ? Math.sqrt(left) : null;
}

/** Batches of each method to see a difference of `worthKnowing` in 100 with a power of 80 %, all pairs looked at together. */
export function neededForLoss(
  { percent, correlation, siteByMethod, batches }: LossGround,
  judged: Judged,
): BatchesNeeded {
  if (batches.length === 0) return { kind: 'unreckoned' };
  const base = Math.min(0.98, Math.max(0.02, percent / 100));
  const points = leftToBatches(worthKnowing.loss, siteByMethod * (100 * base * (1 - base)) ** 2, judged);
  if (points === null) return { kind: 'more-sites' };
  const size = twoProportionsSampleSize({
    first: Math.max(0.001, base - points / 200),
    second: Math.min(0.999, base + points / 200),
    power,
    significance: strictest(judged),
    ratio: 1,
  });
  if (size.kind === 'cannot-compute') return { kind: 'unreckoned' };
  const units = batches.map((batch) => batch.units);
  const meanSize = units.reduce((sum, one) => sum + one, 0) / units.length;
  const spread = Math.sqrt(units.reduce((sum, one) => sum + (one - meanSize) ** 2, 0) / units.length);
  const needed = clustersNeeded(size.firstGroup, {
    meanSize: Math.max(1, meanSize),
    intraClusterCorrelation: Math.min(1, Math.max(0, correlation)),
    sizeVariation: spread / meanSize,
  });
  return { kind: 'of-each', ofEach: needed.clustersPerGroupWhole };
}

/**
 * Batches of each method to see a difference of so many points of biological efficiency with a power of 80 %, all pairs looked
 * at together, batches differing by lots, runs and the rest as the model found; each a treatment run of its own.
 */
export function neededForYield(
  {
    varianceComponents,
    residualStandardDeviation,
  }: Pick<PlainFit, 'varianceComponents' | 'residualStandardDeviation'>,
  judged: Judged,
): BatchesNeeded {
  const varianceOf = (own: (term: string) => boolean) =>
    varianceComponents.filter(({ term }) => own(term)).reduce((sum, one) => sum + one.variance, 0);
  const variance =
    varianceOf((term) => term !== 'site' && term !== 'site x method') + (residualStandardDeviation ?? 0) ** 2;
  if (variance === 0) return { kind: 'unreckoned' };
  const points = leftToBatches(
    worthKnowing.yield,
    varianceOf((term) => term === 'site x method'),
    judged,
  );
  if (points === null) return { kind: 'more-sites' };
  const size = twoMeansSampleSize({
    difference: points,
    standardDeviation: Math.sqrt(variance),
    power,
    significance: strictest(judged),
    design: 'independent',
  });
  return size.kind === 'cannot-compute'
    ? { kind: 'unreckoned' }
    : { kind: 'of-each', ofEach: size.perGroupWhole };
}
