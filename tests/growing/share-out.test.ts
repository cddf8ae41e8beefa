import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOfMass, costOfMinutes, shareOut } from '@/lib/growing/share-out';

describe('sharing out a whole number', () => {
  it('gives what is left to the largest remainders: 10 by 1, 2 and 4 is 1, 3 and 6', () => {
    expect(shareOut(10, [1, 2, 4])).toEqual([1, 3, 6]);
  });

  it('gives what is left to the first where remainders are equal', () => {
    expect(shareOut(100, [1, 1, 1])).toEqual([34, 33, 33]);
  });

  it('cannot share by weights that are all 0, or by none', () => {
    expect(shareOut(100, [0, 0])).toBeNull();
    expect(shareOut(100, [])).toBeNull();
  });

  it('adds up to the whole, and no share is a whole one away from its part', () => {
    const weights = fc.array(fc.nat({ max: 10_000_000 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000_000 }), weights, (amount, given) => {
        const total = given.reduce((sum, weight) => sum + weight, 0);
        const shares = shareOut(amount, given);
        if (total === 0) return shares === null;
        const near = shares?.every(
          (share, at) => Math.abs(share - (amount * (given[at] ?? 0)) / total) < 1 + 1e-6,
        );
        return near === true && shares?.reduce((sum, share) => sum + share, 0) === amount;
      }),
    );
  });
});

describe('what a mass or an hour costs', () => {
  it('is rounded to the nearest whole cent, half a cent up', () => {
    expect(costOfMass(333, 1000, 1000)).toBe(333);
    expect(costOfMass(1, 1, 2)).toBe(1);
    expect(costOfMass(1, 1, 3)).toBe(0);
    expect(costOfMinutes(90, 1500)).toBe(2250);
    expect(costOfMinutes(1, 30)).toBe(1);
    expect(costOfMinutes(1, 29)).toBe(0);
  });
});
