import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { varianceShares } from '@/lib/stats/mixed/variance-shares';

function sharesOf(parts: Parameters<typeof varianceShares>[0]) {
  const shares = varianceShares(parts);
  if ('kind' in shares) throw new Error(shares.explanation);
  return shares;
}

describe('varianceShares', () => {
  it('divides each variance by the sum of all', () => {
    const [site, rest] = sharesOf([
      { variance: 3, low: 1, high: 9 },
      { variance: 1, low: 0.5, high: 2 },
    ]);
    expect(site?.estimate).toBeCloseTo(0.75, 12);
    expect(rest?.estimate).toBeCloseTo(0.25, 12);
  });

  it('squares and adds what each limit alone would do', () => {
    const [site] = sharesOf([
      { variance: 1, low: 0.25, high: 4 },
      { variance: 1, low: 0.5, high: 3 },
    ]);
    // Worked by hand: 0.5 - sqrt((0.5 - 0.2)^2 + (0.5 - 0.25)^2), 0.5 + sqrt((0.8 - 0.5)^2 + (2/3 - 0.5)^2).
    expect(site?.low).toBeCloseTo(0.5 - Math.hypot(0.3, 0.25), 12);
    expect(site?.high).toBeCloseTo(0.5 + Math.hypot(0.3, 1 / 6), 12);
  });

  it('leaves open a share of nothing where a variance of 0 is not ruled out', () => {
    const [site] = sharesOf([
      { variance: 1, low: 0, high: 2 },
      { variance: 1, low: 0.9, high: 1.1 },
    ]);
    expect(site?.low).toBe(0);
  });

  it('reaches 1 where the upper limit of a variance is unknown', () => {
    const [lot] = sharesOf([
      { variance: 0.2, low: 0, high: Number.POSITIVE_INFINITY },
      { variance: 1, low: 0.5, high: 2 },
    ]);
    expect(lot?.high).toBe(1);
  });

  it('says that nothing varies when all variances are 0', () => {
    expect(varianceShares([{ variance: 0, low: 0, high: 1 }])).toMatchObject({
      kind: 'cannot-compute',
      reason: 'no-variation',
    });
  });

  it('gives shares that add up to 1, each between its limits', () => {
    const part = fc
      .tuple(fc.double({ min: 0, max: 5, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
      .map(([variance, width]) => ({ variance, low: variance * (1 - width), high: variance + 3 * width }));
    fc.assert(
      fc.property(fc.array(part, { minLength: 2, maxLength: 6 }), (parts) => {
        fc.pre(parts.some(({ variance }) => variance > 1e-6));
        const shares = sharesOf(parts);
        expect(shares.reduce((sum, { estimate }) => sum + estimate, 0)).toBeCloseTo(1, 9);
        for (const { estimate, low, high } of shares) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(estimate + 1e-12);
          expect(high).toBeGreaterThanOrEqual(estimate - 1e-12);
          expect(high).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it('names the argument that no data can have', () => {
    expect(() => varianceShares([{ variance: -1, low: 0, high: 1 }])).toThrow('parts[0].variance');
  });
});
