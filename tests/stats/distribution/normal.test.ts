import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  logNormalCdf,
  normalCdf,
  normalQuantile,
  normalSurvival,
  normalUpperQuantile,
} from '@/lib/stats/distribution/normal';
import { ArgumentError } from '@/lib/stats/outcome';
import { expectClose } from './expect-close';

describe('the normal distribution', () => {
  it('agrees with 40-digit arithmetic far out in the tails', () => {
    expectClose(normalCdf(-12.5), 3.732564298877714e-36, 1e-13);
    expectClose(logNormalCdf(-60), -1805.013560680567, 1e-13);
  });

  it('is symmetric, and its two tails add up to 1', () => {
    fc.assert(
      fc.property(fc.double({ min: -38, max: 38, noNaN: true }), (x) => {
        expect(normalCdf(x)).toBe(normalSurvival(-x));
        expect(normalCdf(x) + normalSurvival(x)).toBeCloseTo(1, 14);
      }),
    );
  });

  it('takes quantiles back to the probability they came from, in both tails', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1, noNaN: true }), (p) => {
        expectClose(normalCdf(normalQuantile(p)), p, 1e-12);
        expectClose(normalSurvival(normalUpperQuantile(p)), p, 1e-12);
      }),
    );
  });

  it('keeps the digits of quantiles beside the median', () => {
    // x = sqrt(2 pi) (p - 1/2) to first order; p - 1/2 is exact here.
    expectClose(normalQuantile(0.5 + 2 ** -40), Math.sqrt(2 * Math.PI) * 2 ** -40, 1e-13);
    expect(normalQuantile(0.5)).toBe(0);
  });

  it('goes to infinity at probabilities 0 and 1 and refuses others by name', () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(() => normalQuantile(1.1)).toThrow(ArgumentError);
    expect(() => normalQuantile(Number.NaN)).toThrow(/^p:/);
    expect(() => normalCdf(Number.NaN)).toThrow(/^x:/);
  });
});
