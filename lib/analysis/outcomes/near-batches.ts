import { addTo, cellIn, runsAt, type SiteSums, siteIn } from './cell-sums';
import { keysOf, numbersOf } from './column-text';
import { methodCode } from './method-codes';
import { addAmounts } from './near-amounts';
import { codeOf, type NearOf, withFlags } from './near-codes';

type Column = string | null;

/**
 * Batches at the ends of a period, alike in all that decides where they count, as texts of arrays: flags as `near-codes` has
 * them, then units; where these count, contaminated by the window's end and later, lost clean, fresh, what it is divided by,
 * weighed later; of logs open units and unit-days, fresh and dry of the whole life.
 */
export type NearColumns = readonly [...NearOf, sites: Column, clusters: Column, ...numbers: Column[]];

/** A run of near batches: for what any of them counts within the ends, and is too young, two bits a measure. */
type NearRun = { readonly site: SiteSums; readonly cell: number; mask: number };
export type NearRuns = Map<string, NearRun>;

/** Lays the batches at the ends of a period over the sums of their sites. */
export function addNear(ends: readonly NearColumns[], sites: Map<string, SiteSums>): void {
  const runs: NearRuns = new Map();
  for (const columns of ends) addClass(columns, sites, runs);
  addRuns(runs);
}

/** Adds the runs of near batches to the sums of their sites. */
export function addRuns(runs: NearRuns): void {
  for (const { site, cell, mask } of runs.values())
    for (let measure = 0; measure < 4; measure += 1)
      addTo(
        site.numbers,
        cell + runsAt + measure,
        ((mask >> (2 * measure)) & 1) - ((mask >> (2 * measure + 1)) & 1),
      );
}

/** Batches of a site that are alike, and what they come to. */
export type NearPlace = {
  readonly site: SiteSums;
  readonly cell: number;
  readonly code: number;
  readonly contamination: boolean;
  readonly yield: boolean;
  readonly cropped: boolean;
  readonly life: boolean;
};

export function nearPlace(site: SiteSums, of: NearOf, code: number): NearPlace {
  return {
    site,
    code,
    cell: cellIn(site, methodCode(of[0])),
    contamination: of[2] === 'counted',
    yield: of[3] === 'counted',
    cropped: of[4],
    life: of[5] === 'counted',
  };
}

function addClass(columns: NearColumns, sites: Map<string, SiteSums>, runs: NearRuns): void {
  const [method, material, contamination, given, cropped, life, ofSites, ofClusters, ...rest] = columns;
  const of: NearOf = [method, material, contamination, given, cropped, life];
  const code = codeOf(of);
  const [flags = [], ...numbers] = rest.map(numbersOf);
  const ids = keysOf(ofSites);
  const clusters = keysOf(ofClusters);
  const own = new Map<string, NearPlace>();
  const amounts = new Array<number>(numbers.length).fill(0);
  for (let row = 0; row < ids.length; row += 1) {
    const id = ids[row] ?? '';
    let place = own.get(id);
    if (place === undefined) {
      place = nearPlace(siteIn(sites, id), of, code);
      own.set(id, place);
    }
    for (let at = 0; at < amounts.length; at += 1) amounts[at] = numbers[at]?.[row] ?? 0;
    addBatch(place, flags[row] ?? 0, amounts, 0, clusters[row] ?? '', runs);
  }
}

/** Adds one batch; its amounts (units first) begin at `start`. */
export function addBatch(
  place: NearPlace,
  flags: number,
  amounts: readonly number[],
  start: number,
  cluster: string,
  runs: NearRuns,
): void {
  const inside = flags & 1;
  const young = (flags >> 1) & 1;
  const unripe = (flags >> 2) & 1;
  const counts = {
    contamination: place.contamination ? inside - young : 0,
    yield: place.yield ? inside - unripe : 0,
    cropped: place.cropped ? inside - unripe : 0,
    life: place.life ? inside : 0,
  };
  addAmounts(place.site.numbers, place.cell, inside, counts, amounts, start);
  place.site.near.push(withFlags(place.code, flags), amounts[start] ?? 0);
  if (flags & 8) return;
  let run = runs.get(cluster);
  if (run === undefined) {
    run = { site: place.site, cell: place.cell, mask: 0 };
    runs.set(cluster, run);
  }
  if (place.contamination) run.mask |= inside | (young << 1);
  if (place.yield) run.mask |= (inside << 2) | (unripe << 3);
  if (place.cropped) run.mask |= (inside << 4) | (unripe << 5);
  if (place.life) run.mask |= inside << 6;
}
