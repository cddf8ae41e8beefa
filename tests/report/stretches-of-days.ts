import fc from 'fast-check';
import { rule } from './random-network';

/** Reports of these tests are over days 1 to 10 of one month. */
export const lastDay = 10;

export type Stretch = { readonly first: number; readonly last: number };

/** Mostly quarters and halves, so that stretches begin and end together, as those of real reports do. */
const day = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(1, 4, 6) },
  fc.integer({ min: 1, max: lastDay }),
);

export const stretch = fc
  .tuple(day, day)
  .map(([one, other]): Stretch => ({ first: Math.min(one, other), last: Math.max(one, other) }));

export const dayOf = (at: number) => `2025-05-${String(at).padStart(2, '0')}`;

/** Days of a union of stretches, added and subtracted, when each is left once or not at all; written down anew. */
export function daysLeft(stretches: readonly Stretch[], signs: readonly number[]): Set<number> | undefined {
  const left = new Set<number>();
  for (let at = 1; at <= lastDay; at += 1) {
    const times = stretches.reduce(
      (sum, { first, last }, index) => sum + (at >= first && at <= last ? (signs[index] ?? 0) : 0),
      0,
    );
    if (times < 0 || times > 1) return undefined;
    if (times === 1) left.add(at);
  }
  return left;
}

/** Every way to take some of the stretches once more, once less or not. */
export function signsOf(count: number): number[][] {
  return count === 0 ? [[]] : signsOf(count - 1).flatMap((rest) => [-1, 0, 1].map((sign) => [...rest, sign]));
}

type Given = { readonly siteId: string; readonly grams: number };

export function bySite(rows: readonly Given[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { siteId, grams } of rows) sums[siteId] = (sums[siteId] ?? 0) + grams;
  return sums;
}

/** Whether what is left is what few sites did; written down anew. */
export function few(rows: readonly Given[]): boolean {
  const amounts = Object.values(bySite(rows)).sort((a, b) => b - a);
  const all = amounts.reduce((sum, amount) => sum + amount, 0);
  const topTwo = (amounts[0] ?? 0) + (amounts[1] ?? 0);
  return all > 0 && (amounts.length < rule.minSites || 100 * topTwo >= rule.topTwoPercent * all);
}
