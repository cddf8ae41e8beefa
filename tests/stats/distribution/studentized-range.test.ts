import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tSurvival } from '@/lib/stats/distribution/student-t';
import { tukeyCdf, tukeyQuantile, tukeySurvival } from '@/lib/stats/distribution/studentized-range';
import { expectClose } from './expect-close';

describe('the studentised range', () => {
  it.each([
    [1, 1.999, 1e-11],
    [2, 5, 8e-4],
    [5, 10, 1e-5],
    [10, 2000, 1e-7],
  ])(
    'is the two-sided t for two means, with %d to %d degrees of freedom within the error stated',
    (fewest, most, error) => {
      fc.assert(
        fc.property(
          fc.double({ min: 0.01, max: 80, noNaN: true }),
          fc.double({ min: fewest, max: most, noNaN: true }),
          (q, df) => {
            const apart = Math.abs(tukeySurvival(q, 2, df) - 2 * tSurvival(q / Math.SQRT2, df));
            expect(apart).toBeLessThan(error);
          },
        ),
        { numRuns: 15 },
      );
    },
  );

  it('keeps the relative accuracy of far upper tails', () => {
    expectClose(tukeySurvival(60, 2, 12), 2 * tSurvival(60 / Math.SQRT2, 12), 1e-8);
  });

  // ptukey and qtukey of R 4.2.2, which take the mean over the scale by the same published rule.
  it('agrees with R where the rule is at its worst', () => {
    expectClose(tukeyCdf(2, 2, 2), 0.707132796837614, 1e-9);
    expectClose(tukeyCdf(8, 4, 2), 0.9265554606305068, 1e-9);
    expectClose(tukeyQuantile(0.99, 10, 2), 34.925601863382276, 1e-4);
  });

  it.each([
    [3, 3, 2, 0.7116500172349732, 5e-6],
    [8, 4, 2, 0.9265603375408054, 5e-6],
    [5, 10, 2, 0.6811595778154753, 5e-6],
    [15, 3, 4, 0.9990044305630681, 1e-7],
    [3.5, 6, 7, 0.7517056554568196, 1e-8],
  ])('is near scipy 1.17.1 at q = %d, %d means, %d degrees of freedom', (q, means, df, within, error) => {
    expect(Math.abs(tukeyCdf(q, means, df) - within)).toBeLessThan(error);
    expect(Math.abs(tukeySurvival(q, means, df) - (1 - within))).toBeLessThan(error);
  });

  it('gives the upper 5 % and 1 % points of published tables', () => {
    // Two decimals of the usual tables (Pearson & Hartley 1966, table 29, from memory).
    expect(tukeyQuantile(0.95, 3, 10)).toBeCloseTo(3.88, 2);
    expect(tukeyQuantile(0.95, 5, 20)).toBeCloseTo(4.23, 2);
    expect(tukeyQuantile(0.99, 4, 12)).toBeCloseTo(5.5, 2);
    expect(tukeyQuantile(0.99, 2, 2)).toBeCloseTo(14.04, 0);
    expect(tukeyQuantile(0.95, 3, Number.POSITIVE_INFINITY)).toBeCloseTo(3.31, 2);
  });

  it('takes quantiles back to the probability they came from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.9999, noNaN: true }),
        fc.integer({ min: 2, max: 30 }),
        fc.double({ min: 2, max: 500, noNaN: true }),
        (p, means, df) => expectClose(tukeyCdf(tukeyQuantile(p, means, df), means, df), p, 1e-8),
      ),
      { numRuns: 8 },
    );
  });

  it('refuses fewer than two means and degrees of freedom that are not above 0', () => {
    expect(() => tukeyCdf(1, 1, 5)).toThrow(/^means:/);
    expect(() => tukeyCdf(1, 3, 0)).toThrow(/^df:/);
    expect(() => tukeyCdf(-1, 3, 5)).toThrow(/^q:/);
  });
});
