import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaBinomialDensities } from '@/lib/stats/watching/beta-binomial-densities';
import { binomialTest } from '@/lib/stats/watching/binomial-test';
import { exactFunnelLimit, overdispersedFunnelLimit } from '@/lib/stats/watching/exact-funnel-limit';
import { funnel } from '@/lib/stats/watching/funnel';
import { normalFunnelLimit } from '@/lib/stats/watching/normal-funnel-limit';
import { observedExpected } from '@/lib/stats/watching/observed-expected';
import { pChart } from '@/lib/stats/watching/p-chart';
import { poissonBinomialTest } from '@/lib/stats/watching/poisson-binomial-test';

const probability = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('observedExpected', () => {
  it('gives the exact limits of standard tables for 10, 1 and 0 events', () => {
    // Garwood's limits as in tables of the Poisson mean (from memory).
    const limits = (observed: number) => {
      const answer = observedExpected(observed, 1, 0.95);
      if (answer.kind === 'cannot-compute') throw new Error(answer.explanation);
      return answer.exactInterval;
    };
    expect(limits(10)).toMatchObject({ low: expect.closeTo(4.795, 3), high: expect.closeTo(18.39, 2) });
    expect(limits(1)).toMatchObject({ low: expect.closeTo(0.0253, 4), high: expect.closeTo(5.572, 3) });
    expect(limits(0)).toMatchObject({ low: 0, high: expect.closeTo(3.689, 3) });
  });

  it('keeps the mid-P limits inside the exact ones, and scales with the expectation', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (o, e) => {
          const answer = observedExpected(o, e, 0.95);
          const doubled = observedExpected(o, 2 * e, 0.95);
          if (answer.kind !== 'estimate' || doubled.kind !== 'estimate') throw new Error('no ratio');
          expect(answer.interval.low).toBeGreaterThanOrEqual(answer.exactInterval.low);
          expect(answer.interval.high).toBeLessThanOrEqual(answer.exactInterval.high);
          expect(doubled.interval.high * 2).toBeCloseTo(answer.interval.high, 6);
        },
      ),
    );
  });

  it('has no ratio to an expectation of 0 and names a wrong count', () => {
    expect(observedExpected(3, 0, 0.95)).toMatchObject({ reason: 'zero-denominator' });
    expect(() => observedExpected(-1, 2, 0.95)).toThrow(/observed/);
    expect(() => observedExpected(1, Number.NaN, 0.95)).toThrow(/expected/);
    expect(() => observedExpected(1, 1, 95)).toThrow(/level/);
  });
});

describe('binomialTest', () => {
  it('finds the same as the Poisson-binomial test of equal probabilities', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.nat(40), probability, (n, raw, p) => {
        const x = Math.min(raw, n);
        const [one, other] = [
          binomialTest(x, n, p),
          poissonBinomialTest(
            x,
            Array.from({ length: n }, () => p),
          ),
        ];
        if (one.kind !== 'test' || other.kind !== 'test') throw new Error('no test');
        expect(other.tails.upper).toBeCloseTo(one.tails.upper, 10);
        expect(other.tails.lowerMidP).toBeCloseTo(one.tails.lowerMidP, 10);
        expect(other.expectedEvents).toBeCloseTo(one.expectedEvents, 10);
      }),
    );
  });

  it('adds up the counts no more likely than the one seen', () => {
    // Brute force over all counts.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.nat(30), probability, (n, raw, p) => {
        const x = Math.min(raw, n);
        const densities = betaBinomialDensities(n, p, 0);
        const limit = Number(densities[x]) * (1 + 1e-7);
        const expected = densities.filter((density) => density <= limit).reduce((sum, d) => sum + d, 0);
        const answer = binomialTest(x, n, p);
        if (answer.kind !== 'test') throw new Error('no test');
        if (x !== n * p) expect(answer.twoSidedLeastLikely).toBeCloseTo(Math.min(1, expected), 9);
      }),
    );
  });

  it('gives the published p-value of a coin', () => {
    // 18 heads of 20: 2 (1 + 20 + 190) / 2^20 = 0.000402.
    expect(binomialTest(18, 20, 0.5)).toMatchObject({
      twoSidedLeastLikely: expect.closeTo(422 / 2 ** 20, 15),
    });
  });

  it('names impossible counts', () => {
    expect(() => binomialTest(5, 4, 0.5)).toThrow(/events/);
    expect(() => binomialTest(1, 4, 1.5)).toThrow(/probability/);
    expect(() => poissonBinomialTest(3, [0.5, 0.5])).toThrow(/events/);
    expect(() => poissonBinomialTest(1, [0.5, -0.1])).toThrow(/probabilities\[1\]/);
    expect(binomialTest(0, 0, 0.5)).toMatchObject({ reason: 'no-data' });
    expect(poissonBinomialTest(0, [])).toMatchObject({ reason: 'no-data' });
  });
});

describe('betaBinomialDensities', () => {
  it('adds up to 1 with the mean and the variance of correlated units', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        probability,
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (n, mean, correlation) => {
          const densities = betaBinomialDensities(n, mean, correlation);
          const moment = (power: number) => densities.reduce((sum, d, k) => sum + d * k ** power, 0);
          expect(moment(0)).toBeCloseTo(1, 9);
          expect(moment(1)).toBeCloseTo(n * mean, 7);
          const variance = n * mean * (1 - mean) * (1 + (n - 1) * correlation);
          expect((moment(2) - moment(1) ** 2) / variance).toBeCloseTo(1, 6);
        },
      ),
    );
  });
});

describe('very large counts', () => {
  it('are worked out, or refused by name where every count would have to be listed', () => {
    expect(binomialTest(1e8, 1e9, 0.1)).toMatchObject({ twoSidedLeastLikely: 1, n: 1e9 });
    expect(observedExpected(1e9, 1e9, 0.95)).toMatchObject({ estimate: 1 });
    expect(() => betaBinomialDensities(1e9, 0.1, 0.1)).toThrow(/^n:/);
  });
});

describe('funnel', () => {
  const sites = [
    { label: 'Alder', events: 4, units: 40 },
    { label: 'Birch', events: 9, units: 60 },
    { label: 'Cedar', events: 22, units: 55 },
    { label: 'Dogwood', events: 6, units: 80 },
    { label: 'Elder', events: 0, units: 0 },
  ];

  it('does not depend on the order of sites, and leaves out those without units', () => {
    const one = funnel(sites, { winsorise: 0.1 });
    const other = funnel(sites.toReversed(), { winsorise: 0.1 });
    if (one.kind !== 'funnel' || other.kind !== 'funnel') throw new Error('no funnel');
    expect(other.dispersion).toBeCloseTo(one.dispersion, 12);
    expect(other.unshrunkBetweenVariance).toBeCloseTo(one.unshrunkBetweenVariance, 12);
    expect(one.leftOut).toEqual(['Elder']);
    expect(one.points).toHaveLength(4);
    expect(one.target).toBeCloseTo(41 / 235, 14);
  });

  it('says why there is no funnel, and names a wrong site', () => {
    expect(funnel([], { winsorise: 0.1 })).toMatchObject({ reason: 'no-data' });
    expect(funnel([{ label: 'a', events: 0, units: 9 }], { winsorise: 0.1 })).toMatchObject({
      reason: 'no-variation',
    });
    expect(() => funnel([...sites, ...sites], { winsorise: 0.1 })).toThrow(/"Alder" occurs twice/);
    expect(() => funnel(sites, { winsorise: 0.5 })).toThrow(/winsorise/);
    expect(() => funnel(sites, { winsorise: 0.1, target: 1 })).toThrow(/target/);
  });

  it('draws limits that close in on the target as sites grow, wider when sites differ beyond chance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.integer({ min: 20, max: 300 }),
        (target, units) => {
          const width = (n: number, variance: number) =>
            overdispersedFunnelLimit(target, n, 0.975, variance) -
            overdispersedFunnelLimit(target, n, 0.025, variance);
          expect(overdispersedFunnelLimit(target, units, 0.975, 0)).toBeCloseTo(
            exactFunnelLimit(target, units, 0.975),
            8,
          );
          expect(width(4 * units, 0)).toBeLessThan(width(units, 0));
          expect(width(units, 0.002)).toBeGreaterThan(width(units, 0));
        },
      ),
    );
  });

  it('widens normal limits by a factor or by a variance, never below chance', () => {
    const limit = (widening: Parameters<typeof normalFunnelLimit>[3]) =>
      normalFunnelLimit(0.1, 0.03, 0.975, widening);
    expect(limit({ kind: 'none' })).toBeCloseTo(0.1 + 1.959964 * 0.03, 6);
    expect(limit({ kind: 'multiplicative', dispersion: 0.5 })).toBe(limit({ kind: 'none' }));
    expect(limit({ kind: 'multiplicative', dispersion: 4 })).toBeCloseTo(0.1 + 1.959964 * 0.06, 6);
    expect(limit({ kind: 'additive', betweenVariance: 0.0016 })).toBeCloseTo(0.1 + 1.959964 * 0.05, 6);
  });
});

describe('pChart', () => {
  it('gives the published limits of the orange-juice cans', () => {
    // Montgomery, Introduction to Statistical Quality Control, example of 30 samples of 50 cans (from memory):
    // centre 0.2313, limits 0.0524 and 0.4102, samples 15 and 23 outside.
    const cans = [
      12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9,
      6,
    ];
    const chart = pChart(cans.map((events) => ({ events, units: 50 })));
    if (chart.kind !== 'p-chart') throw new Error(chart.explanation);
    expect(chart.centre).toBeCloseTo(0.2313, 4);
    expect(chart.points[0]).toMatchObject({
      low: expect.closeTo(0.0524, 4),
      high: expect.closeTo(0.4102, 4),
    });
    expect(chart.points.flatMap(({ outside }, index) => (outside ? [index + 1] : []))).toEqual([15, 23]);
    expect(chart.laneySigma).toBeGreaterThan(1);
  });

  it('has no Laney limits for one batch, and no limits where nothing varies', () => {
    expect(pChart([{ events: 1, units: 5 }])).toMatchObject({
      laneySigma: { reason: 'too-few-observations' },
    });
    expect(pChart([{ events: 0, units: 5 }])).toMatchObject({ reason: 'no-variation' });
    expect(pChart([])).toMatchObject({ reason: 'no-data' });
    expect(() => pChart([{ events: 0, units: 0 }])).toThrow(/units/);
  });
});
