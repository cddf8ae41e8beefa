import { type CellSums, noCell } from './cell-sums';
import { keysOf, numbersOf } from './column-text';
import { addAmounts } from './near-amounts';
import { codeOf, type NearOf, withFlags } from './near-codes';
import type { YoungBatches } from './young-batches';

type Column = string | null;

/**
 * Batches at the ends of a period, alike in all that decides where they count, as texts of arrays: flags as `near-codes` has
 * them, then units; where these count, contaminated by the window's end and later, lost clean, fresh, what it is divided by,
 * weighed later; of logs open units and unit-days, fresh and dry of the whole life.
 */
export type NearColumns = readonly [...NearOf, sites: Column, clusters: Column, ...numbers: Column[]];

/** What one site adds to the sums of a question. */
export type SiteSums = {
  readonly cells: Map<string, CellSums>;
  /** Two numbers a near batch: its code (see `near-codes`) and its units. */
  readonly near: number[];
  /** Runs of near batches to add for contamination, yield, cropped and life, by method. */
  readonly runs: Map<string, number[]>;
};

/** The site's own sums, begun where there are none yet. */
export function siteIn(sites: Map<string, SiteSums>, id: string): SiteSums {
  const known = sites.get(id);
  if (known !== undefined) return known;
  const own: SiteSums = { cells: new Map(), near: [], runs: new Map() };
  sites.set(id, own);
  return own;
}

export function cellIn({ cells }: SiteSums, method: string): CellSums {
  const known = cells.get(method);
  if (known !== undefined) return known;
  const own = noCell();
  cells.set(method, own);
  return own;
}

/** Which young batches are wanted, by days since 1970: inoculated from one to another, of a species and material or of any (null). */
export type YoungAsked = {
  readonly first: number;
  readonly last: number;
  readonly species: string | null;
  readonly material: string | null;
  readonly isAtAnEnd: (inoculated: number) => boolean;
  /** Today at a site. */
  readonly dayAt: (site: string) => number;
};

/** A run of near batches: for what any of them counts within the ends, and is too young, two bits a measure. */
type NearRun = { readonly site: SiteSums; readonly method: string; mask: number };

/** Lays the batches at the ends of a period, and those that are too young, over the sums of their sites. */
export function addNear(
  ends: readonly NearColumns[],
  young: ReadonlyMap<string, YoungBatches>,
  asked: YoungAsked,
  sites: Map<string, SiteSums>,
): void {
  const runs = new Map<string, NearRun>();
  for (const columns of ends) addClass(columns, sites, runs);
  for (const [site, classes] of young) addYoung(site, classes, asked, sites, runs);
  for (const { site, method, mask } of runs.values()) {
    const own = site.runs.get(method) ?? [0, 0, 0, 0];
    site.runs.set(method, own);
    for (let measure = 0; measure < 4; measure += 1)
      own[measure] = (own[measure] ?? 0) + ((mask >> (2 * measure)) & 1) - ((mask >> (2 * measure + 1)) & 1);
  }
}

/** Batches of a site that are alike, and what they come to. */
type NearPlace = {
  readonly site: SiteSums;
  readonly method: string;
  readonly cell: CellSums;
  readonly code: number;
  readonly contamination: boolean;
  readonly yield: boolean;
  readonly cropped: boolean;
  readonly life: boolean;
};

function placeIn(sites: Map<string, SiteSums>, id: string, of: NearOf, code: number): NearPlace {
  const site = siteIn(sites, id);
  const method = of[0];
  return {
    site,
    method,
    code,
    cell: cellIn(site, method),
    contamination: of[2] === 'counted',
    yield: of[3] === 'counted',
    cropped: of[4],
    life: of[5] === 'counted',
  };
}

function addClass(columns: NearColumns, sites: Map<string, SiteSums>, runs: Map<string, NearRun>): void {
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
      place = placeIn(sites, id, of, code);
      own.set(id, place);
    }
    for (let at = 0; at < amounts.length; at += 1) amounts[at] = numbers[at]?.[row] ?? 0;
    addBatch(place, flags[row] ?? 0, amounts, 0, clusters[row] ?? '', runs);
  }
}

function addYoung(
  id: string,
  classes: YoungBatches,
  { first, last, species, material, isAtAnEnd, dayAt }: YoungAsked,
  sites: Map<string, SiteSums>,
  runs: Map<string, NearRun>,
): void {
  const today = dayAt(id);
  for (const { species: ofSpecies, of, code, clusters, numbers } of classes) {
    if (species !== null && ofSpecies !== species) continue;
    if (material !== null && of[1] !== material) continue;
    let place: NearPlace | undefined;
    for (let row = 0; row < numbers.length; row += 1) {
      const batch = numbers[row] ?? [];
      const [marks = 0, inoculated = 0, contamination = 0, given = 0] = batch;
      const flags = (contamination > today ? 2 : 0) | (given > today ? 4 : 0);
      // Those at the ends were read there, with what they are too young for.
      if (flags === 0 || inoculated < first || inoculated > last || isAtAnEnd(inoculated)) continue;
      place ??= placeIn(sites, id, of, code);
      addBatch(place, flags | marks, batch, 4, clusters[row] ?? '', runs);
    }
  }
}

/** Adds one batch; its amounts (units first) begin at `start`. */
function addBatch(
  place: NearPlace,
  flags: number,
  amounts: readonly number[],
  start: number,
  cluster: string,
  runs: Map<string, NearRun>,
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
  addAmounts(place.cell, inside, counts, amounts, start);
  place.site.near.push(withFlags(place.code, flags), amounts[start] ?? 0);
  if (flags & 8) return;
  let run = runs.get(cluster);
  if (run === undefined) {
    run = { site: place.site, method: place.method, mask: 0 };
    runs.set(cluster, run);
  }
  if (place.contamination) run.mask |= inside | (young << 1);
  if (place.yield) run.mask |= (inside << 2) | (unripe << 3);
  if (place.cropped) run.mask |= (inside << 4) | (unripe << 5);
  if (place.life) run.mask |= inside << 6;
}
