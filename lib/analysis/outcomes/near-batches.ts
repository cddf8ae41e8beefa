import { type CellSums, noCell } from './cell-sums';
import { keysOf, numbersOf } from './column-text';

type Column = string | null;
type Of = readonly [
  methodKey: string,
  materialKey: string,
  contaminationClass: string,
  yieldClass: string,
  cropped: boolean,
  lifeClass: string | null,
];

/**
 * Batches that the kept sums do not hold as they count today, alike in all that decides where they count, as texts of
 * arrays. Flags: 1 within the period's ends, 2 too young for contamination, 4 for yield, 8 apart, then the marks from 16 on:
 * run missing, trimmed, as picked, dry assumed, shared. Then units; where these count, contaminated by the window's end and
 * later, lost clean, fresh, what it is divided by, weighed later; of logs open units and unit-days, fresh and dry of the
 * whole life.
 */
export type NearColumns = readonly [...Of, sites: Column, clusters: Column, ...numbers: Column[]];

/** What stands in `NearClass` of sums-of-totals, of one site. */
export type SiteClass = { readonly of: Of; readonly key: string; readonly numbers: number[] };

/** What one site adds to the sums of a question. */
export type SiteSums = {
  readonly cells: Map<string, CellSums>;
  readonly classes: SiteClass[];
  /** Runs of near batches to add for contamination, yield, cropped and life, by method. */
  readonly runs: Map<string, number[]>;
};

/** The site's own sums, begun where there are none yet. */
export function siteIn(sites: Map<string, SiteSums>, id: string): SiteSums {
  const known = sites.get(id);
  if (known !== undefined) return known;
  const own: SiteSums = { cells: new Map(), classes: [], runs: new Map() };
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

/** A run of near batches: for what any of them counts within the ends, and is too young, two bits a measure. */
type NearRun = { readonly site: SiteSums; readonly method: string; mask: number };

/** Lays near batches over the sums of their sites. */
export function addNear(classes: readonly NearColumns[], sites: Map<string, SiteSums>): void {
  const runs = new Map<string, NearRun>();
  for (const columns of classes) addClass(columns, sites, runs);
  for (const { site, method, mask } of runs.values()) {
    const own = site.runs.get(method) ?? [0, 0, 0, 0];
    site.runs.set(method, own);
    for (let measure = 0; measure < 4; measure += 1)
      own[measure] = (own[measure] ?? 0) + ((mask >> (2 * measure)) & 1) - ((mask >> (2 * measure + 1)) & 1);
  }
}

function addClass(columns: NearColumns, sites: Map<string, SiteSums>, runs: Map<string, NearRun>): void {
  const [method, material, contamination, given, cropped, life, ofSites, ofClusters, ...rest] = columns;
  const of: Of = [method, material, contamination, given, cropped, life];
  const key = of.join(' ');
  const numbers = rest.map(numbersOf);
  const ids = keysOf(ofSites);
  const clusters = keysOf(ofClusters);
  const judged = {
    contamination: contamination === 'counted',
    yield: given === 'counted',
    life: life === 'counted',
  };
  const own = new Map<string, { site: SiteSums; cell: CellSums; sums: number[] }>();
  const begun = (id: string) => {
    const site = siteIn(sites, id);
    const sums = new Array<number>(21).fill(0);
    site.classes.push({ of, key, numbers: sums });
    const place = { site, cell: cellIn(site, method), sums };
    own.set(id, place);
    return place;
  };
  for (let row = 0; row < ids.length; row += 1) {
    const id = ids[row] ?? '';
    const { site, cell, sums } = own.get(id) ?? begun(id);
    const flags = numbers[0]?.[row] ?? 0;
    const inside = flags & 1;
    const young = (flags >> 1) & 1;
    const unripe = (flags >> 2) & 1;
    const counts = {
      contamination: judged.contamination ? inside - young : 0,
      yield: judged.yield ? inside - unripe : 0,
      cropped: cropped ? inside - unripe : 0,
      life: judged.life ? inside : 0,
    };
    addToCell(cell, inside, counts, numbers, row);
    addToClass(sums, inside, young, unripe, numbers[1]?.[row] ?? 0, flags >> 4);
    if (flags & 8) continue;
    const cluster = clusters[row] ?? '';
    let run = runs.get(cluster);
    if (run === undefined) {
      run = { site, method, mask: 0 };
      runs.set(cluster, run);
    }
    if (judged.contamination) run.mask |= inside | (young << 1);
    if (judged.yield) run.mask |= (inside << 2) | (unripe << 3);
    if (cropped) run.mask |= (inside << 4) | (unripe << 5);
    if (judged.life) run.mask |= inside << 6;
  }
}

/** How often a batch counts: 1, 0, or -1 to take it off what the kept sums hold. */
type Counts = { contamination: number; yield: number; cropped: number; life: number };

function addToCell(
  cell: CellSums,
  inside: number,
  { contamination: c, yield: y, cropped: k, life: l }: Counts,
  numbers: readonly (readonly number[])[],
  row: number,
): void {
  const units = numbers[1]?.[row] ?? 0;
  cell.batches += inside;
  if (c !== 0) {
    cell.contaminationBatches += c;
    cell.contaminationUnits += c * units;
    cell.contaminated += c * (numbers[2]?.[row] ?? 0);
    cell.contaminatedLater += c * (numbers[3]?.[row] ?? 0);
    cell.lostClean += c * (numbers[4]?.[row] ?? 0);
  }
  const over = numbers[6]?.[row] ?? 0;
  const later = numbers[7]?.[row] ?? 0;
  const open = numbers[8]?.[row] ?? 0;
  const openDays = numbers[9]?.[row] ?? 0;
  if (y !== 0) {
    cell.yieldBatches += y;
    cell.yieldUnits += y * units;
    cell.fresh += y * (numbers[5]?.[row] ?? 0);
    cell.yieldOver += y * over;
    cell.freshLater += y * later;
    cell.openUnits += y * open;
    cell.openUnitDays += y * openDays;
  }
  if (k !== 0) {
    cell.croppedBatches += k;
    cell.croppedUnits += k * units;
    cell.croppedOver += k * over;
    cell.croppedLater += k * later;
    cell.croppedOpenUnits += k * open;
    cell.croppedOpenUnitDays += k * openDays;
  }
  if (l !== 0) {
    cell.lifeBatches += l;
    cell.lifeUnits += l * units;
    cell.lifeFresh += l * (numbers[10]?.[row] ?? 0);
    cell.lifeDry += l * (numbers[11]?.[row] ?? 0);
  }
}

function addTo(sums: number[], place: number, number: number): void {
  sums[place] = (sums[place] ?? 0) + number;
}

function addToClass(
  sums: number[],
  inside: number,
  young: number,
  unripe: number,
  units: number,
  marks: number,
): void {
  addTo(sums, 0, inside);
  addTo(sums, 1, inside * units);
  addTo(sums, 2, young);
  addTo(sums, 3, young * units);
  addTo(sums, 4, unripe);
  addTo(sums, 5, unripe * units);
  for (let mark = 0; marks >> mark > 0; mark += 1) {
    if (((marks >> mark) & 1) === 0) continue;
    addTo(sums, 6 + mark, inside - young);
    addTo(sums, 11 + mark, inside - unripe);
    addTo(sums, 16 + mark, inside);
  }
}
