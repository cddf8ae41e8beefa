import { clustersNeeded } from '@/lib/stats/planning/clusters-needed';
import { twoProportionsSampleSize } from '@/lib/stats/planning/two-proportions-sample-size';
import type { CountedBatch } from '../adjusted/contamination-request';
import type { WhatWouldTell } from './methods-answer';

/** A difference of so many units in 100 would change what a grower does. Our choice. */
const worthKnowing = 5;
const power = 0.8;
const significance = 0.05;

/**
 * What would tell two methods apart: how many batches of each it takes, at sites that use both, to see a difference of
 * `worthKnowing` in 100 with a power of 80 %, less those there are.
 *
 * @param percent a typical rate of the two. @param correlation of units of one batch.
 */
export function whatWouldTell(
  first: string,
  second: string,
  percent: number,
  correlation: number,
  batches: readonly CountedBatch[],
): WhatWouldTell {
  const base = Math.min(0.98, Math.max(0.02, percent / 100));
  const half = worthKnowing / 200;
  const size = twoProportionsSampleSize({
    first: Math.max(0.001, base - half),
    second: Math.min(0.999, base + half),
    power,
    significance,
    ratio: 1,
  });
  const counts = countsBySite(batches, first, second);
  const both = counts.filter(({ ofFirst, ofSecond }) => ofFirst > 0 && ofSecond > 0);
  const have = {
    [first]: both.reduce((sum, { ofFirst }) => sum + ofFirst, 0),
    [second]: both.reduce((sum, { ofSecond }) => sum + ofSecond, 0),
  };
  const method = (have[first] ?? 0) <= (have[second] ?? 0) ? first : second;
  const siteId = nextSite(counts, method === first);
  if (siteId === undefined) return { kind: 'time' };
  if (size.kind === 'cannot-compute') return { kind: 'sites', method, siteId };
  const units = batches.map((batch) => batch.units);
  const meanSize = units.reduce((sum, one) => sum + one, 0) / units.length;
  const spread = Math.sqrt(units.reduce((sum, one) => sum + (one - meanSize) ** 2, 0) / units.length);
  const needed = clustersNeeded(size.firstGroup, {
    meanSize: Math.max(1, meanSize),
    intraClusterCorrelation: Math.min(1, Math.max(0, correlation)),
    sizeVariation: spread / meanSize,
  });
  const more = needed.clustersPerGroupWhole - (have[method] ?? 0);
  return more > 0
    ? { kind: 'batches', method, batches: more, siteId, points: worthKnowing }
    : { kind: 'sites', method, siteId };
}

type SiteCount = { readonly siteId: string; readonly ofFirst: number; readonly ofSecond: number };

function countsBySite(batches: readonly CountedBatch[], first: string, second: string): SiteCount[] {
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
