import { clustersNeeded } from '@/lib/stats/planning/clusters-needed';
import { twoMeansSampleSize } from '@/lib/stats/planning/two-means-sample-size';
import { twoProportionsSampleSize } from '@/lib/stats/planning/two-proportions-sample-size';
import type { CountedBatch } from '../adjusted/contamination-request';
import type { PlainFit } from '../fitting/plain-fit';
import type { WhatWouldTell } from './methods-answer';

/** Differences that would change what a grower does: units in 100, and points of biological efficiency. Our choice. */
const worthKnowing = { loss: 5, yield: 10 } as const;
const power = 0.8;
const significance = 0.05;

/** Batches of each method that it takes; null where no number is enough. */
type Needed = { readonly ofEach: number | null; readonly points: number };

type Placed = Pick<CountedBatch, 'siteId' | 'methodKey'>;

/**
 * Batches of each method to see a difference of `worthKnowing` in 100 with a power of 80 %.
 *
 * @param percent a typical rate of the two. @param correlation of units of one batch.
 */
export function neededForLoss(
  percent: number,
  correlation: number,
  batches: readonly CountedBatch[],
): Needed {
  const points = worthKnowing.loss;
  const base = Math.min(0.98, Math.max(0.02, percent / 100));
  const size = twoProportionsSampleSize({
    first: Math.max(0.001, base - points / 200),
    second: Math.min(0.999, base + points / 200),
    power,
    significance,
    ratio: 1,
  });
  if (size.kind === 'cannot-compute') return { ofEach: null, points };
  const units = batches.map((batch) => batch.units);
  const meanSize = units.reduce((sum, one) => sum + one, 0) / units.length;
  const spread = Math.sqrt(units.reduce((sum, one) => sum + (one - meanSize) ** 2, 0) / units.length);
  const needed = clustersNeeded(size.firstGroup, {
    meanSize: Math.max(1, meanSize),
    intraClusterCorrelation: Math.min(1, Math.max(0, correlation)),
    sizeVariation: spread / meanSize,
  });
  return { ofEach: needed.clustersPerGroupWhole, points };
}

/**
 * Batches of each method to see a difference of so many points of biological efficiency with a power of 80 %, batches differing
 * by lots, runs and the rest as the model found; each a treatment run of its own.
 */
export function neededForYield({
  varianceComponents,
  residualStandardDeviation,
}: Pick<PlainFit, 'varianceComponents' | 'residualStandardDeviation'>): Needed {
  const points = worthKnowing.yield;
  const variance = varianceComponents
    .filter(({ term }) => term !== 'site' && term !== 'site x method')
    .reduce((sum, one) => sum + one.variance, (residualStandardDeviation ?? 0) ** 2);
  if (variance === 0) return { ofEach: null, points };
  const size = twoMeansSampleSize({
    difference: points,
    standardDeviation: Math.sqrt(variance),
    power,
    significance,
    design: 'independent',
  });
  return { ofEach: size.kind === 'cannot-compute' ? null : size.perGroupWhole, points };
}

/** What would tell two methods apart: the batches that it takes at sites that use both, less those there are. */
export function whatWouldTell(
  first: string,
  second: string,
  { ofEach, points }: Needed,
  batches: readonly Placed[],
): WhatWouldTell {
  const counts = countsBySite(batches, first, second);
  const both = counts.filter(({ ofFirst, ofSecond }) => ofFirst > 0 && ofSecond > 0);
  const have = {
    [first]: both.reduce((sum, { ofFirst }) => sum + ofFirst, 0),
    [second]: both.reduce((sum, { ofSecond }) => sum + ofSecond, 0),
  };
  const method = (have[first] ?? 0) <= (have[second] ?? 0) ? first : second;
  const more = ofEach === null ? 0 : ofEach - (have[method] ?? 0);
  if (more <= 0) return anotherSite(counts, first, second);
  const siteId = nextSite(counts, method === first);
  return siteId === undefined ? { kind: 'time' } : { kind: 'batches', method, batches: more, siteId, points };
}

/** The site that has used one of them most and the other never: what batches cannot add, one more site can. */
function anotherSite(counts: readonly SiteCount[], first: string, second: string): WhatWouldTell {
  const [best] = counts
    .filter(({ ofFirst, ofSecond }) => (ofFirst === 0) !== (ofSecond === 0))
    .sort((a, b) => b.ofFirst + b.ofSecond - a.ofFirst - a.ofSecond);
  return best === undefined
    ? { kind: 'time' }
    : { kind: 'sites', method: best.ofFirst === 0 ? first : second, siteId: best.siteId };
}

type SiteCount = { readonly siteId: string; readonly ofFirst: number; readonly ofSecond: number };

function countsBySite(batches: readonly Placed[], first: string, second: string): SiteCount[] {
  const counts = new Map<string, { ofFirst: number; ofSecond: number }>();
  for (const { siteId, methodKey } of batches) {
    const count = counts.get(siteId) ?? { ofFirst: 0, ofSecond: 0 };
    if (methodKey === first) count.ofFirst += 1;
    if (methodKey === second) count.ofSecond += 1;
    counts.set(siteId, count);
  }
  return [...counts]
    .map(([siteId, count]) => ({ siteId, ...count }))
    .sort((a, b) => (a.siteId < b.siteId ? -1 : 1));
}

/** The site with most batches of the other method and fewest of the wanted one. */
function nextSite(counts: readonly SiteCount[], firstWanted: boolean): string | undefined {
  const lack = ({ ofFirst, ofSecond }: SiteCount) => (firstWanted ? ofSecond - ofFirst : ofFirst - ofSecond);
  const [best] = counts.filter((count) => lack(count) > 0).sort((a, b) => lack(b) - lack(a));
  return best?.siteId;
}
