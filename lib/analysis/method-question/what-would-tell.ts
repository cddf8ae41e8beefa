import type { CountedBatch } from '../adjusted/contamination-request';
import type { BatchesNeeded } from './batches-needed';
import type { WhatWouldTell } from './methods-answer';

type Placed = Pick<CountedBatch, 'siteId' | 'methodKey'>;

/** So many sites that use both are named. */
const sitesNamed = 3;

/**
 * What would help to tell two methods apart: the batches of each that it takes at sites that use both, less those there are;
 * or one more site that uses both, where batches at these sites alone would not do.
 *
 * @param points the difference that is to be told. @param neededAt what it takes at so many sites that use both.
 */
export function whatWouldTell(
  first: string,
  second: string,
  points: number,
  batches: readonly Placed[],
  neededAt: (sites: number) => BatchesNeeded,
): WhatWouldTell {
  const counts = countsBySite(batches, first, second);
  const both = counts.filter(({ ofFirst, ofSecond }) => ofFirst > 0 && ofSecond > 0);
  const another = (enough: boolean) => anotherSite(counts, first, second, { enough, points });
  if (both.length === 0) return another(false);
  const needed = neededAt(both.length);
  if (needed.kind === 'unreckoned') return { kind: 'unreckoned' };
  if (needed.kind === 'more-sites') return another(false);
  const ofFirst = both.reduce((sum, count) => sum + count.ofFirst, 0);
  const ofSecond = both.reduce((sum, count) => sum + count.ofSecond, 0);
  const lacks = [
    { method: first, batches: enoughBeside(ofSecond, needed.ofEach) - ofFirst },
    { method: second, batches: enoughBeside(ofFirst, needed.ofEach) - ofSecond },
  ].filter((lack) => lack.batches > 0);
  if (lacks.length === 0) return another(true);
  const siteIds = [...both]
    .sort((a, b) => b.ofFirst + b.ofSecond - a.ofFirst - a.ofSecond)
    .slice(0, sitesNamed)
    .map(({ siteId }) => siteId);
  return { kind: 'batches', lacks, siteIds, points };
}

/** Batches of one method beside so many of the other that tell as much as `ofEach` of both: 1/a + 1/b = 2/n. */
function enoughBeside(other: number, ofEach: number): number {
  return other > ofEach ? Math.ceil(1 / (2 / ofEach - 1 / other)) : ofEach;
}

/** The site that has used one of them most and the other never: what batches cannot add, one more site can. */
function anotherSite(
  counts: readonly SiteCount[],
  first: string,
  second: string,
  said: { readonly enough: boolean; readonly points: number },
): WhatWouldTell {
  const [best] = counts
    .filter(({ ofFirst, ofSecond }) => (ofFirst === 0) !== (ofSecond === 0))
    .sort((a, b) => b.ofFirst + b.ofSecond - a.ofFirst - a.ofSecond);
  return best === undefined
    ? { kind: 'time' }
    : { kind: 'sites', method: best.ofFirst === 0 ? first : second, siteId: best.siteId, ...said };
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
