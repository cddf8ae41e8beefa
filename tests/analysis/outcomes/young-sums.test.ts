import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addSums, cellAt, noSums } from '@/lib/analysis/outcomes/cell-sums';
import { codeOf, type NearOf } from '@/lib/analysis/outcomes/near-codes';
import type { YoungBatches } from '@/lib/analysis/outcomes/young-batches';
import { type YoungAsked, youngSums } from '@/lib/analysis/outcomes/young-sums';

const of: NearOf = ['steam', 'straw', 'counted', 'counted', true, null];
const batch = fc.record({
  inoculated: fc.integer({ min: 0, max: 40 }),
  judged: fc.integer({ min: 0, max: 80 }),
  yielded: fc.integer({ min: 0, max: 80 }),
  units: fc.integer({ min: 1, max: 90 }),
});
type Batch = typeof batch extends fc.Arbitrary<infer One> ? One : never;

/** Each batch on its own line of numbers: marks, days, then amounts from units on. */
function youngOf(all: readonly Batch[]): YoungBatches {
  const numbers = all.map(({ inoculated, judged, yielded, units }) => {
    return [0, inoculated, judged, yielded, units, 1, 0, 0, 700, 900, 0, 0, 0, 0, 0];
  });
  const clusters = all.map((_batch, at) => `run ${at}`);
  return [{ species: 'oyster', of, code: codeOf(of), clusters, numbers }];
}

const whole: YoungAsked = {
  ...{ first: 0, last: 40, species: null, material: null, ends: [] },
  dayAt: () => 50,
};
const partly: YoungAsked = { ...whole, last: 20, ends: [[5, 9]] };
const elsewhere: YoungAsked = { ...whole, species: 'shiitake' };

it('young batches are taken off what counts, of those inoculated within a question and not at its ends', () => {
  fc.assert(
    fc.property(fc.array(batch, { minLength: 1, maxLength: 20 }), fc.nat(80), (all, today) => {
      const { numbers, near } = youngSums(youngOf(all), partly, today);
      const within = all.filter(({ inoculated }) => inoculated <= 20 && (inoculated < 5 || inoculated > 9));
      const young = within.filter(({ judged }) => judged > today);
      expect(0 - (numbers[cellAt.contaminationUnits] ?? 0)).toBe(
        young.reduce((sum, { units }) => sum + units, 0),
      );
      expect(0 - (numbers[cellAt.yieldBatches] ?? 0)).toBe(
        within.filter(({ yielded }) => yielded > today).length,
      );
      expect(near).toHaveLength(
        2 * within.filter(({ judged, yielded }) => judged > today || yielded > today).length,
      );
    }),
    { numRuns: 300 },
  );
});

it('what was worked out once is the same for every question after, other days and species between them', () => {
  fc.assert(
    fc.property(fc.array(batch, { minLength: 1, maxLength: 20 }), (all) => {
      const young = youngOf(all);
      const asked = [
        [whole, 30],
        [partly, 30],
        [elsewhere, 30],
        [whole, 31],
        [whole, 30],
      ] as const;
      for (const [question, today] of asked) {
        const own = youngSums(young, question, today);
        expect(own).toEqual(youngSums(youngOf(all), question, today));
        // Laid over the sums of a site, which are another question's own.
        const site = noSums();
        addSums(site, own);
        addSums(site, own);
      }
    }),
    { numRuns: 100 },
  );
});
