import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchCost } from '@/lib/growing/batch-cost';
import { costOfMass, costOfMinutes, shareOut } from '@/lib/growing/share-out';

const none = { labourMinutes: 0, suppliesMinor: 0, fuelMinor: 0, waterMinor: 0 };
const straw = { grams: 12_000, price: { paidMinor: 1_200, forGrams: 300_000 } };
const spawn = { grams: 1_200, price: { paidMinor: 2_500, forGrams: 2_000 } };

describe('what a batch cost', () => {
  it('adds up lots by their price, its own parts, and its share of runs', () => {
    // 12 kg of straw at 12.00 for 300 kg are 0.48; 1.2 kg of spawn at 25.00 for 2 kg are 15.00.
    const facts = {
      substrates: [straw],
      spawns: [spawn],
      own: { labourMinutes: 90, suppliesMinor: 300, fuelMinor: 50, waterMinor: 10 },
      treatments: [{ labourMinutes: 30, suppliesMinor: 0, fuelMinor: 220, waterMinor: 5 }],
    };
    expect(batchCost(facts, null)).toEqual({
      kind: 'full',
      minor: 48 + 1500 + 360 + 225,
      labourMinutes: 120,
    });
    expect(batchCost(facts, 1250)).toEqual({ kind: 'full', minor: 2133 + 2500, labourMinutes: 120 });
  });

  it('is not given when a part is missing, and every missing part is named', () => {
    const facts = {
      substrates: [{ grams: null, price: straw.price }],
      spawns: [{ grams: 100, price: null }],
      own: { ...none, labourMinutes: null },
      treatments: [{ ...none, fuelMinor: null }],
    };
    expect(batchCost(facts, 1250)).toEqual({
      kind: 'missing',
      parts: ['substrate', 'spawn', 'labour', 'treatment-fuel'],
    });
  });

  it('takes 0 for none, and what was given for nothing for any mass', () => {
    const given = { grams: null, price: { paidMinor: 0, forGrams: 1 } };
    expect(batchCost({ substrates: [given], spawns: [given], own: none, treatments: [] }, 0)).toEqual({
      ...{ kind: 'full', minor: 0, labourMinutes: 0 },
    });
  });
});

describe('amounts shared out', () => {
  it('add up to the whole to the last cent, near their weights', () => {
    expect(shareOut(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(5, [0, 3])).toEqual([0, 5]);
    expect(shareOut(5, [0, 0])).toBeNull();
    fc.assert(
      fc.property(
        fc.nat({ max: 2_000_000_000 }),
        fc.array(fc.nat({ max: 100_000_000 }), { minLength: 1, maxLength: 30 }),
        (minor, weights) => {
          const shares = shareOut(minor, weights);
          const whole = weights.reduce((sum, one) => sum + one, 0);
          if (whole === 0) return shares === null;
          const sum = shares?.reduce((total, one) => total + one, 0);
          return (
            sum === minor &&
            (shares ?? []).every((share, at) => Math.abs(share - (minor * (weights[at] ?? 0)) / whole) <= 1)
          );
        },
      ),
    );
  });

  it('of masses and minutes are rounded by half a cent up, beyond what a double holds', () => {
    expect(costOfMass(1, 1, 2)).toBe(1);
    expect(costOfMass(1, 1, 3)).toBe(0);
    expect(costOfMass(100_000_000, 2_000_000_001, 99_999_999)).toBe(2_000_000_021);
    expect([costOfMinutes(1, 30), costOfMinutes(1, 29), costOfMinutes(90, 1250)]).toEqual([1, 0, 1875]);
  });
});
