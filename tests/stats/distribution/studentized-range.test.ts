import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tSurvival } from '@/lib/stats/distribution/student-t';
import { tukeyCdf, tukeyQuantile, tukeySurvival } from '@/lib/stats/distribution/studentized-range';
import { expectClose } from './expect-close';

describe('the studentised range', () => {
  it('is the two-sided t for two means, where R 4.2.2 is wrong by 1e-4 at 2 degrees of freedom', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 12, noNaN: true }),
        fc.double({ min: 1, max: 2000, noNaN: true }),
        (q, df) => expectClose(tukeySurvival(q, 2, df), 2 * tSurvival(q / Math.SQRT2, df), 1e-5),
      ),
      { numRuns: 40 },
    );
  });

  it.each([
    [3, 3, 2, 0.7116500172349732, 0.28834998276502677],
    [8, 4, 2, 0.9265603375408054, 0.07343966245919464],
    [5, 10, 2, 0.6811595778154753, 0.3188404221845247],
    [15, 3, 4, 0.9990044305630681, 0.000995569436931909],
    [3.5, 6, 7, 0.7517056554568196, 0.24829434454318045],
  ])(
    'agrees with scipy 1.17.1 at q = %d, %d means, %d degrees of freedom',
    (q, means, df, within, beyond) => {
      expectClose(tukeyCdf(q, means, df), within, 1e-11);
      expectClose(tukeySurvival(q, means, df), beyond, 1e-9);
    },
  );

  it('gives the upper 5 % and 1 % points of published tables', () => {
    // Two decimals of the usual tables (Pearson & Hartley 1966, table 29, from memory).
    expect(tukeyQuantile(0.95, 3, 10)).toBeCloseTo(3.88, 2);
    expect(tukeyQuantile(0.95, 5, 20)).toBeCloseTo(4.23, 2);
    expect(tukeyQuantile(0.99, 4, 12)).toBeCloseTo(5.5, 2);
    expect(tukeyQuantile(0.99, 2, 2)).toBeCloseTo(14.04, 2);
    expect(tukeyQuantile(0.95, 3, Number.POSITIVE_INFINITY)).toBeCloseTo(3.31, 2);
  });

  it('takes quantiles back to the probability they came from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.9999, noNaN: true }),
        fc.integer({ min: 2, max: 30 }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (p, means, df) => expectClose(tukeyCdf(tukeyQuantile(p, means, df), means, df), p, 1e-8),
      ),
      { numRuns: 25 },
    );
  });

  it('refuses fewer than two means and degrees of freedom that are not above 0', () => {
    expect(() => tukeyCdf(1, 1, 5)).toThrow(/^means:/);
    expect(() => tukeyCdf(1, 3, 0)).toThrow(/^df:/);
    expect(() => tukeyCdf(-1, 3, 5)).toThrow(/^q:/);
  });
});
