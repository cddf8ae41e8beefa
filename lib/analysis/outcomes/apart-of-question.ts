import type { SiteDates } from '../comparison/batch-facts';
import type { TreatedIn } from '../comparison/cluster-of-run';
import { boundsOf } from '../comparison/read-batch-rows';
import { type ApartBatches, perBatch } from './apart-batches';
import { epochDay, epochDaysAt } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';

/** What is apart at sites, and which of it a question is about. */
export type ApartOfQuestion = {
  readonly sites: Iterable<readonly [site: string, apart: readonly ApartBatches[]]>;
  /** Of each run that a batch names. */
  readonly numbers: ReadonlyMap<string, number>;
  readonly wanted: OutcomesWanted;
  readonly today: SiteDates;
};

/** Batches alike within a question: from one place of their numbers up to another, and today at their site. */
export type ApartWithin = {
  readonly own: ApartBatches;
  readonly start: number;
  readonly end: number;
  readonly today: number;
};

/**
 * The batches that a question is about, where they lie: they are gone through and not copied, since a network of a thousand
 * sites has more than a hundred thousand of them.
 */
export function apartWithin({ sites, wanted, today }: ApartOfQuestion): ApartWithin[] {
  const { from, to, species, material } = boundsOf(wanted);
  const [first, last] = [epochDay(from), epochDay(to)];
  const dayAt = epochDaysAt(today);
  const within: ApartWithin[] = [];
  for (const [site, apart] of sites) {
    const day = dayAt(site);
    if (day === undefined) continue;
    for (const own of apart) {
      if (species !== null && own.species !== species) continue;
      if (material !== null && own.material !== material) continue;
      const [start, end] = [placeOf(own.numbers, first), placeOf(own.numbers, last + 1)];
      if (start < end) within.push({ own, start, end, today: day });
    }
  }
  return within;
}

/** Those of them that were treated in several runs, and so join these. */
export function joiningWithin(within: readonly ApartWithin[]): (TreatedIn & { runs: readonly number[] })[] {
  return within.flatMap(({ own: { joining, numbers }, start, end }) => {
    if (joining.length === 0) return [];
    const [first = 0, last = 0] = [numbers[start + 2], numbers[end - perBatch + 2]];
    return joining.filter(({ inoculated }) => inoculated >= first && inoculated <= last);
  });
}

/** For what the batch at a place counts today. */
export function flagsAt(numbers: Int32Array, at: number, today: number): number {
  const come = ((numbers[at + 3] ?? 0) <= today ? 1 : 0) | ((numbers[at + 4] ?? 0) <= today ? 2 + 4 : 0) | 8;
  return (numbers[at + 1] ?? 0) & come;
}

/** Where the numbers of the first batch inoculated on a day or later begin. */
function placeOf(numbers: Int32Array, day: number): number {
  let [low, high] = [0, numbers.length / perBatch];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[perBatch * middle + 2] ?? 0) < day) low = middle + 1;
    else high = middle;
  }
  return perBatch * low;
}
