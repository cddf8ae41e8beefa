import { noSums, type SiteSums } from './cell-sums';
import { addBatch, addRuns, type NearPlace, type NearRuns, nearPlace } from './near-batches';
import type { YoungBatches } from './young-batches';

/** Which young batches are wanted, by days since 1970: inoculated from one to another, of a species and material or of any (null). */
export type YoungAsked = {
  readonly first: number;
  readonly last: number;
  readonly species: string | null;
  readonly material: string | null;
  /** The ends of the period: batches there were read with what they are too young for. */
  readonly ends: readonly (readonly [start: number, end: number])[];
  /** Today at a site. */
  readonly dayAt: (site: string) => number;
};

/** Of the young batches of a site: when they were inoculated, and what was worked out of all of them by the question. */
type Worked = { readonly first: number; readonly last: number; readonly sums: Map<string, SiteSums> };

/** So many questions that differ in species, material or day. */
const most = 12;
const worked = new WeakMap<YoungBatches, Worked>();

/**
 * What the young batches of a site add to its kept sums, which hold them as if their day had come; not to be changed. Most
 * questions reach over all of them, and are answered from one that did so before. Runs of one site only are in question:
 * those that reach over several are apart.
 */
export function youngSums(young: YoungBatches, asked: YoungAsked, today: number): SiteSums {
  let known = worked.get(young);
  if (known === undefined) {
    known = { ...daysOf(young), sums: new Map() };
    worked.set(young, known);
  }
  const { first, last, sums } = known;
  const whole =
    asked.first <= first &&
    last <= asked.last &&
    asked.ends.every(([start, end]) => end < first || last < start);
  if (!whole) return sumsOfYoung(young, asked, today);
  const key = `${asked.species} ${asked.material} ${today}`;
  const before = sums.get(key);
  if (before !== undefined) return before;
  const own = sumsOfYoung(young, asked, today);
  sums.set(key, own);
  const [oldest] = sums.keys();
  if (sums.size > most && oldest !== undefined) sums.delete(oldest);
  return own;
}

function daysOf(young: YoungBatches): { first: number; last: number } {
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { numbers } of young)
    for (const [, inoculated = 0] of numbers) {
      if (inoculated < first) first = inoculated;
      if (inoculated > last) last = inoculated;
    }
  return { first, last };
}

function sumsOfYoung(
  young: YoungBatches,
  { first, last, species, material, ends }: YoungAsked,
  today: number,
): SiteSums {
  const site = noSums();
  const runs: NearRuns = new Map();
  for (const { species: ofSpecies, of, code, clusters, numbers } of young) {
    if (species !== null && ofSpecies !== species) continue;
    if (material !== null && of[1] !== material) continue;
    let place: NearPlace | undefined;
    for (let row = 0; row < numbers.length; row += 1) {
      const batch = numbers[row] ?? [];
      const [marks = 0, inoculated = 0, contamination = 0, given = 0] = batch;
      const flags = (contamination > today ? 2 : 0) | (given > today ? 4 : 0);
      if (flags === 0 || inoculated < first || inoculated > last) continue;
      if (ends.some(([start, end]) => inoculated >= start && inoculated <= end)) continue;
      place ??= nearPlace(site, of, code);
      addBatch(place, flags | marks, batch, 4, clusters[row] ?? '', runs);
    }
  }
  addRuns(runs);
  return site;
}
