import type { SeededRandom } from '@/lib/stats/random/seeded-random';

/** One of a list, each in proportion to its weight. */
export function pickWeighted<T>(random: SeededRandom, items: readonly T[], weightOf: (item: T) => number): T {
  const total = items.reduce((sum, item) => sum + weightOf(item), 0);
  let point = random.next() * total;
  for (const item of items) {
    point -= weightOf(item);
    if (point < 0) return item;
  }
  const last = items.at(-1);
  if (last === undefined) throw new Error('nothing to pick from');
  return last;
}

export function pickOne<T>(random: SeededRandom, items: readonly T[]): T {
  return pickWeighted(random, items, () => 1);
}

/** A whole number from `from` to `to`, both included. */
export function between(random: SeededRandom, from: number, to: number): number {
  return from + random.integer(to - from + 1);
}

export function logistic(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}
