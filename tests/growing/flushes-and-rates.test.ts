import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bedYieldKgPerSquareMetre } from '@/lib/growing/bed-yield';
import { flushShares } from '@/lib/growing/flush-shares';
import { gramsPerLogPerYear } from '@/lib/growing/log-yield';
import { percentChange } from '@/lib/growing/percent-change';
import { productionRate } from '@/lib/growing/production-rate';
import { proposeFlush } from '@/lib/growing/propose-flush';
import { expectReason, given } from './expect-value';

describe('shares by flush', () => {
  it('gives 47.8, 37.9 and 14.3 % for ARGAW23', () => {
    const shares = given(
      flushShares([
        { flush: 1, grams: 166 },
        { flush: 2, grams: 131.6 },
        { flush: 3, grams: 49.66 },
      ]),
    );
    expect(shares.map((share) => Number(share.sharePercent.toFixed(1)))).toEqual([47.8, 37.9, 14.3]);
  });

  it('adds up several weighings of a flush, in order of flush, to 100', () => {
    const weighing = fc.record({
      flush: fc.integer({ min: 1, max: 6 }),
      grams: fc.integer({ min: 0, max: 9999 }),
    });
    fc.assert(
      fc.property(fc.array(weighing, { minLength: 1 }), (weighings) => {
        fc.pre(weighings.some((one) => one.grams > 0));
        const shares = given(flushShares(weighings));
        expect(shares.reduce((sum, share) => sum + share.sharePercent, 0)).toBeCloseTo(100, 8);
        const flushes = shares.map((share) => share.flush);
        expect(flushes).toEqual([...new Set(flushes)].sort((first, second) => first - second));
      }),
    );
  });

  it('has no shares without a harvest', () => {
    expectReason(flushShares([]), 'no-harvest-yet');
    expectReason(flushShares([{ flush: 1, grams: 0 }]), 'no-harvest-yet');
  });
});

describe('production rate', () => {
  it('divides by the days to the last harvest', () => {
    expect(given(productionRate(80, '2026-03-01', '2026-05-20'))).toEqual({ percentPerDay: 1, days: 80 });
  });

  it('differs from the figure to the first harvest: OLIVE20 105.0 % over 34.7 days would be 3.03', () => {
    expect(105 / 34.7).toBeCloseTo(3.03, 2);
    expect(given(productionRate(105, '2026-01-01', '2026-03-12')).percentPerDay).toBeCloseTo(1.5, 2);
  });

  it('needs a last harvest after inoculation', () => {
    expectReason(productionRate(80, '2026-03-01', null), 'no-harvest-yet');
    expectReason(productionRate(80, '2026-03-01', '2026-03-01'), 'days-not-positive');
  });
});

describe('beds and logs', () => {
  it('gives beds in kilograms per square metre: AMB Express 2017 prints 26.6', () => {
    expect(given(bedYieldKgPerSquareMetre(26_600, 1))).toBeCloseTo(26.6, 10);
    expect(given(bedYieldKgPerSquareMetre(4882, 0.5))).toBeCloseTo(9.764, 10);
    expectReason(bedYieldKgPerSquareMetre(1000, null), 'area-missing');
    expectReason(bedYieldKgPerSquareMetre(1000, 0), 'area-missing');
  });

  it('gives logs in grams per log per year, from one year on', () => {
    expect(given(gramsPerLogPerYear(20_000, 10, 1460))).toBeCloseTo(500.3, 1);
    expectReason(gramsPerLogPerYear(20_000, 10, 364), 'less-than-a-year');
    expectReason(gramsPerLogPerYear(20_000, 0, 800), 'no-inoculated-units');
  });
});

describe('percent change', () => {
  it('is +30 for 200 to 260 and -25 for 200 to 150, and has no baseline at 0', () => {
    expect(given(percentChange(200, 260))).toBeCloseTo(30, 10);
    expect(given(percentChange(200, 150))).toBeCloseTo(-25, 10);
    expectReason(percentChange(0, 50), 'no-baseline');
  });
});

describe('the flush proposed for a harvest', () => {
  const earlier = [
    { on: '2026-05-01', flush: 1 },
    { on: '2026-05-03', flush: 1 },
    { on: '2026-05-14', flush: 2 },
  ];

  it('is the first for a first harvest, the same while picking goes on, the next after a rest', () => {
    expect(proposeFlush([], '2026-05-01')).toBe(1);
    expect(proposeFlush(earlier, '2026-05-15')).toBe(2);
    expect(proposeFlush(earlier, '2026-05-21')).toBe(3);
    expect(proposeFlush(earlier, '2026-05-20')).toBe(2);
  });

  it('looks only at pickings up to that day for a late entry', () => {
    expect(proposeFlush(earlier, '2026-05-04')).toBe(1);
    expect(proposeFlush(earlier, '2026-04-28')).toBe(1);
  });
});
