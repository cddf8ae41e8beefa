import { describe, expect, it } from 'vitest';
import { risingLogsOf } from '@/lib/stats/clustered/rising-logs';
import { seededRandom } from '@/lib/stats/random/seeded-random';

/** Term by term, with what rounding took off each sum carried along (Kahan). */
function termByTerm(counts: readonly number[], base: number, step: number): number {
  let [sum, lost] = [0, 0];
  for (const count of counts)
    for (let j = 0; j < count; j += 1) {
      const term = Math.log(base + j * step) - lost;
      const next = sum + term;
      lost = next - sum - term;
      sum = next;
    }
  return sum;
}

describe('risingLogsOf', () => {
  it('is the sum term by term to 13 digits, for few and many counts, small and large', () => {
    const random = seededRandom(4);
    for (const [clusters, size] of [
      [1, 16],
      [1, 17],
      [3, 21],
      [25, 40],
      [40, 900],
      [400, 300],
      [2, 40_000],
    ] as const) {
      const counts = Array.from({ length: clusters }, () => random.integer(size + 1)).concat(size);
      const sums = risingLogsOf(counts);
      for (const base of [1e-9, 0.02, 0.7, 1])
        for (const step of [0, 1e-12, 1e-5, 0.01, 0.4, 30, 1e7]) {
          const expected = termByTerm(counts, base, step);
          const total = counts.reduce((sum, count) => sum + count, 0);
          // Where terms of either sign cancel, digits are counted against the terms and not against what is left.
          expect(Math.abs(sums(base, step) - expected)).toBeLessThan(1e-13 * (Math.abs(expected) + total));
        }
    }
  });

  it('is 0 of counts of none', () => {
    expect(risingLogsOf([])(0.5, 0.1)).toBe(0);
    expect(risingLogsOf([0, 0])(0.5, 0.1)).toBe(0);
  });
});
