import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Adjustment, adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';

const adjustments: Adjustment[] = [
  'benjamini-hochberg',
  'benjamini-yekutieli',
  'holm',
  'bonferroni',
  'hochberg',
  'hommel',
];
const pValues = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 });
const rejected = (adjusted: (number | null)[]) => adjusted.filter((p) => p !== null && p <= 0.05).length;

describe('adjustPValues', () => {
  it.each(adjustments)(
    'keeps %s values between the p-value and 1 and in the order of the p-values',
    (adjustment) => {
      fc.assert(
        fc.property(pValues, (ps) => {
          const adjusted = adjustPValues(ps, adjustment).map(Number);
          ps.forEach((p, index) => {
            expect(adjusted[index]).toBeGreaterThanOrEqual(p);
            expect(adjusted[index]).toBeLessThanOrEqual(1);
            ps.forEach((other, another) => {
              if (p < other) expect(adjusted[index]).toBeLessThanOrEqual(Number(adjusted[another]));
            });
          });
        }),
      );
    },
  );

  it.each(adjustments)('gives %s values that follow the p-values into any order', (adjustment) => {
    fc.assert(
      fc.property(pValues, (ps) => {
        const adjusted = adjustPValues(ps, adjustment);
        expect(adjustPValues(ps.toReversed(), adjustment)).toEqual(adjusted.toReversed());
      }),
    );
  });

  it('ranks the methods from the cautious to the bold', () => {
    fc.assert(
      fc.property(pValues, (ps) => {
        const by = Object.fromEntries(adjustments.map((name) => [name, adjustPValues(ps, name).map(Number)]));
        const order: Adjustment[] = ['bonferroni', 'holm', 'hochberg', 'hommel', 'benjamini-hochberg'];
        ps.forEach((_, index) => {
          const values = order.map((name) => Number(by[name]?.[index]));
          values.slice(1).forEach((value, next) => {
            expect(value).toBeLessThanOrEqual(Number(values[next]) * (1 + 1e-12));
          });
        });
      }),
    );
  });

  it('rejects as many of the fifteen hypotheses of Benjamini & Hochberg (1995) as they do', () => {
    // J R Stat Soc B 57, 295 (from memory): Bonferroni and Hochberg reject three, controlling the FDR four.
    const ps = [
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
      0.759, 1,
    ];
    expect(rejected(adjustPValues(ps, 'bonferroni'))).toBe(3);
    expect(rejected(adjustPValues(ps, 'hochberg'))).toBe(3);
    expect(rejected(adjustPValues(ps, 'benjamini-hochberg'))).toBe(4);
  });

  it('leaves missing p-values missing and does not count them', () => {
    expect(adjustPValues([0.01, null, 0.04], 'holm')).toEqual([0.02, null, 0.04]);
    expect(adjustPValues([null], 'benjamini-hochberg')).toEqual([null]);
    expect(adjustPValues([], 'holm')).toEqual([]);
  });

  it('names a value that is no probability', () => {
    expect(() => adjustPValues([0.5, 1.2], 'holm')).toThrow(/pValues\[1\]/);
    expect(() => adjustPValues([Number.NaN], 'holm')).toThrow(/pValues\[0\]/);
  });
});
