import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { type ApartBatches, type ApartNames, type JoiningBatch, perBatch } from './apart-batches';
import { epochDay, epochDaysAt } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';

/** What is apart at sites, and which of it a question is about. */
export type ApartOfQuestion = {
  readonly sites: Iterable<readonly [site: string, apart: readonly ApartBatches[]]>;
  readonly names: ApartNames;
  readonly wanted: OutcomesWanted;
  readonly today: SiteDates;
};

/** Batches of a site within the days of a question: from one place of their numbers up to another, and today there. */
export type ApartStretch = {
  readonly numbers: Int32Array;
  readonly start: number;
  readonly end: number;
  readonly today: number;
};

/** The batches that a question is about, of any method. */
export type ApartWithin = {
  readonly stretches: readonly ApartStretch[];
  /** Of each kind the place of its method among `methods`, and -1 where the question is about others. */
  readonly methodOf: Int32Array;
  readonly methods: readonly string[];
  /** Those that were treated in several runs, and so join these. */
  readonly joining: readonly JoiningBatch[];
  /** How many runs have numbers. */
  readonly runs: number;
};

/**
 * The batches that a question is about, where they lie: they are gone through and not copied, since a network of a thousand
 * sites has more than a hundred thousand of them.
 */
export function apartWithin({ sites, names, wanted, today }: ApartOfQuestion): ApartWithin {
  const { from, to } = boundsOf(wanted);
  const [first, last] = [epochDay(from), epochDay(to)];
  const dayAt = epochDaysAt(today);
  const { methodOf, methods } = methodsWithin(names, wanted);
  const stretches: ApartStretch[] = [];
  const joining: JoiningBatch[] = [];
  for (const [site, apart] of sites) {
    const day = dayAt(site);
    if (day === undefined) continue;
    for (const own of apart) {
      // A site's batches lie in as many lists as were read.
      const [earliest = 0, latest = 0] = [own.numbers[2], own.numbers[own.numbers.length - perBatch + 2]];
      if (latest < first || earliest > last) continue;
      const isWhole = earliest >= first && latest <= last;
      const start = isWhole ? 0 : placeOf(own.numbers, first);
      const end = isWhole ? own.numbers.length : placeOf(own.numbers, last + 1);
      if (start === end) continue;
      stretches.push({ numbers: own.numbers, start, end, today: day });
      for (const batch of own.joining)
        if (
          methodOf[batch.kind] !== -1 &&
          (isWhole || (batch.inoculated >= first && batch.inoculated <= last))
        )
          joining.push(batch);
    }
  }
  return { stretches, methodOf, methods, joining, runs: names.runs.size };
}

function methodsWithin({ kinds }: ApartNames, wanted: OutcomesWanted) {
  const { species, material } = boundsOf(wanted);
  const methods: string[] = [];
  const methodOf = new Int32Array(kinds.length).fill(-1);
  for (const [kind, of] of kinds.entries()) {
    if ((species !== null && of.species !== species) || (material !== null && of.material !== material))
      continue;
    if (!methods.includes(of.methodKey)) methods.push(of.methodKey);
    methodOf[kind] = methods.indexOf(of.methodKey);
  }
  return { methods, methodOf };
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
