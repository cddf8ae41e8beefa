import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '@/lib/stats/find-root';
import { sampleQuantile } from '@/lib/stats/sample-quantile';

describe('findRoot', () => {
  it('finds the root of smooth, steep and stepped functions to the last bits', () => {
    expect(findRoot(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 15);
    expect(findRoot((x) => x ** 9 - 1e-9, 0, 10)).toBeCloseTo(0.1, 14);
    expect(findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeCloseTo(0.3, 14);
    expect(findRoot((x) => x, 0, 5)).toBe(0);
  });

  it('finds the root of any cubic that crosses between the ends', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (root) => {
        expect(findRoot((x) => (x - root) * (1 + (x - root) ** 2), -6, 7)).toBeCloseTo(root, 12);
      }),
    );
  });

  it('stops within the tolerance when it may', () => {
    let calls = 0;
    const coarse = findRoot(
      (x) => {
        calls += 1;
        return Math.exp(x) - 2;
      },
      0,
      10,
      0.01,
    );
    expect(Math.abs(coarse - Math.LN2)).toBeLessThan(0.01);
    expect(calls).toBeLessThan(20);
  });

  it('refuses ends of the same sign and values that are no numbers', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(/change of sign/);
    expect(() => findRoot(Math.log, -1, 2)).toThrow(/not a number/);
  });
});

describe('sampleQuantile', () => {
  it('interpolates order statistics as R does by default', () => {
    expect(sampleQuantile([4, 1, 3, 2], 0.5)).toBe(2.5);
    expect(sampleQuantile([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], 0.9)).toBe(10);
    expect(sampleQuantile([7], 0.3)).toBe(7);
    expect(sampleQuantile([1, 2], 1)).toBe(2);
    expect(() => sampleQuantile([], 0.5)).toThrow(/values/);
    expect(() => sampleQuantile([1, Number.NaN], 0.5)).toThrow(/values\[1\]/);
  });
});
