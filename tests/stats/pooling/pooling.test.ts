import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BetweenVarianceEstimator, betweenVariance } from '@/lib/stats/pooling/between-variance';
import { confidencePrediction } from '@/lib/stats/pooling/confidence-prediction';
import { fixedEffect } from '@/lib/stats/pooling/fixed-effect';
import { heterogeneity } from '@/lib/stats/pooling/heterogeneity';
import { leaveOneOut } from '@/lib/stats/pooling/leave-one-out';
import { pooledMean } from '@/lib/stats/pooling/pooled-mean';
import { shrunkenEstimates } from '@/lib/stats/pooling/shrunken-estimates';
import type { SiteEstimate } from '@/lib/stats/pooling/site-estimate';
import { weightedMean } from '@/lib/stats/pooling/weighted-mean';

const estimators: BetweenVarianceEstimator[] = ['dersimonian-laird', 'reml', 'paule-mandel'];
const sites = fc
  .array(
    fc.record({
      estimate: fc.double({ min: -4, max: 4, noNaN: true }),
      variance: fc.double({ min: 0.01, max: 2, noNaN: true }),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((rows): SiteEstimate[] => rows.map((row, index) => ({ label: `site ${index}`, ...row })));

/** Log risk ratios of the 13 trials of BCG vaccine (Colditz et al. 1994, JAMA 271, 698-702). */
const bcg: SiteEstimate[] = [
  [4, 123, 11, 139],
  [6, 306, 29, 303],
  [3, 231, 11, 220],
  [62, 13598, 248, 12867],
  [33, 5069, 47, 5808],
  [180, 1541, 372, 1451],
  [8, 2545, 10, 629],
  [505, 88391, 499, 88391],
  [29, 7499, 45, 7277],
  [17, 1716, 65, 1665],
  [186, 50634, 141, 27338],
  [5, 2498, 3, 2341],
  [27, 16913, 29, 17854],
].map(([a = 0, n1 = 0, c = 0, n2 = 0], index) => ({
  label: String(index),
  estimate: Math.log(a / n1 / (c / n2)),
  variance: 1 / a - 1 / n1 + 1 / c - 1 / n2,
}));

describe('pooling over sites', () => {
  it('gives the published random-effects mean of the BCG trials', () => {
    // Viechtbauer (2010, J Stat Softw 36(3), from memory): REML -0.7145 (se 0.1798), tau2 0.3132, Q 152.23,
    // DerSimonian-Laird -0.7141, tau2 0.3088, limits of tau2 0.1197 to 1.1115.
    const reml = pooledMean(bcg, 'reml', 0.95);
    if (reml.kind !== 'estimate') throw new Error(reml.explanation);
    expect(reml.estimate).toBeCloseTo(-0.7145, 4);
    expect(reml.standardError).toBeCloseTo(0.1798, 4);
    expect(reml.betweenVariance).toBeCloseTo(0.3132, 4);
    expect(reml.normalInterval.low).toBeCloseTo(-1.0669, 4);
    expect(betweenVariance(bcg, 'dersimonian-laird')).toBeCloseTo(0.3088, 4);
    const spread = heterogeneity(bcg, 0.95);
    expect(spread).toMatchObject({
      q: expect.closeTo(152.233, 3),
      betweenVarianceInterval: { low: expect.closeTo(0.1197, 4), high: expect.closeTo(1.1115, 4) },
    });
  });

  it('does not depend on the order or the names of sites', () => {
    fc.assert(
      fc.property(sites, fc.constantFrom(...estimators), (rows, estimator) => {
        const other = rows.toReversed().map((row, index) => ({ ...row, label: `other ${index}` }));
        const [one, two] = [pooledMean(rows, estimator, 0.95), pooledMean(other, estimator, 0.95)];
        if (one.kind !== 'estimate' || two.kind !== 'estimate') throw new Error('no mean');
        expect(two.betweenVariance).toBeCloseTo(one.betweenVariance, 6);
        expect(two.estimate).toBeCloseTo(one.estimate, 6);
        expect(two.interval.high).toBeCloseTo(one.interval.high, 5);
      }),
    );
  });

  it('moves and scales with the estimates', () => {
    fc.assert(
      fc.property(sites, fc.constantFrom(...estimators), (rows, estimator) => {
        const scaled = rows.map((row) => ({
          ...row,
          estimate: 10 * row.estimate + 3,
          variance: 100 * row.variance,
        }));
        const [one, two] = [pooledMean(rows, estimator, 0.95), pooledMean(scaled, estimator, 0.95)];
        if (one.kind !== 'estimate' || two.kind !== 'estimate') throw new Error('no mean');
        expect(two.estimate).toBeCloseTo(10 * one.estimate + 3, 4);
        expect(two.interval.low).toBeCloseTo(10 * one.interval.low + 3, 3);
      }),
    );
  });

  it('solves the equations that define each between-site variance', () => {
    fc.assert(
      fc.property(sites, (rows) => {
        const moments = betweenVariance(rows, 'paule-mandel');
        const excess = weightedMean(rows, moments).q - (rows.length - 1);
        if (moments > 0) expect(excess).toBeCloseTo(0, 8);
        else expect(excess).toBeLessThanOrEqual(1e-9);
        const loss = (tau2: number) => {
          const { q, sumOfWeights } = weightedMean(rows, tau2);
          const logs = rows.reduce((sum, { variance }) => sum + Math.log(variance + tau2), 0);
          return logs + Math.log(sumOfWeights) + q;
        };
        const best = betweenVariance(rows, 'reml');
        for (const other of [0, 0.001, 0.01, 0.1, 0.5, 1, 2, 5, 20, best * 0.98, best * 1.02]) {
          expect(loss(best)).toBeLessThanOrEqual(loss(other) + 1e-9);
        }
      }),
    );
  });

  it('shows an interval that is never narrower than the plain one', () => {
    fc.assert(
      fc.property(sites, (rows) => {
        const pooled = pooledMean(rows, 'reml', 0.95);
        if (pooled.kind !== 'estimate') throw new Error(pooled.explanation);
        expect(pooled.interval.low).toBeLessThanOrEqual(pooled.normalInterval.low + 1e-9);
        expect(pooled.interval.high).toBeGreaterThanOrEqual(pooled.normalInterval.high - 1e-9);
      }),
    );
  });

  it('draws every site towards the mean, the least certain furthest', () => {
    const rows = bcg.map((site) => ({ ...site, estimate: site.label === '0' ? 2 : 0 }));
    const shrunken = shrunkenEstimates(rows, 0.1, 0.95);
    const { mean } = weightedMean(rows, 0.1);
    shrunken.forEach(({ estimate, shrinkage }, index) => {
      expect(Math.abs(estimate - mean)).toBeLessThan(Math.abs(Number(rows[index]?.estimate) - mean) + 1e-12);
      expect(shrinkage).toBeCloseTo(
        Number(rows[index]?.variance) / (Number(rows[index]?.variance) + 0.1),
        12,
      );
    });
    expect(new Set(shrunkenEstimates(rows, 0, 0.95).map(({ estimate }) => estimate.toFixed(12))).size).toBe(
      1,
    );
  });

  it('leaves each site out in turn', () => {
    const without = leaveOneOut(bcg, 'reml', 0.95)[3];
    expect(without?.label).toBe('3');
    expect(without?.pooled).toEqual(
      pooledMean(
        bcg.filter(({ label }) => label !== '3'),
        'reml',
        0.95,
      ),
    );
    expect(leaveOneOut(bcg.slice(0, 2), 'reml', 0.95)[0]?.pooled).toMatchObject({
      reason: 'too-few-observations',
    });
  });

  it('predicts a further site more widely than it knows the mean', () => {
    fc.assert(
      fc.property(sites, (rows) => {
        const prediction = confidencePrediction(rows, 0.95);
        if (rows.length < 3) {
          expect(prediction).toMatchObject({ reason: 'too-few-observations' });
          return;
        }
        if (prediction.kind !== 'interval') throw new Error(prediction.explanation);
        const pooled = pooledMean(rows, 'paule-mandel', 0.5);
        if (pooled.kind !== 'estimate') throw new Error(pooled.explanation);
        expect(prediction.low).toBeLessThan(pooled.interval.low);
        expect(prediction.high).toBeGreaterThan(pooled.interval.high);
      }),
      { numRuns: 30 },
    );
  });

  it('answers for one site with that site, for none with a reason, and names what is wrong', () => {
    const one: SiteEstimate[] = [{ label: 'a', estimate: 0.7, variance: 0.1 }];
    expect(pooledMean(one, 'reml', 0.95)).toMatchObject({
      estimate: 0.7,
      betweenVariance: 0,
      hartungKnapp: { reason: 'too-few-observations' },
    });
    expect(pooledMean([], 'reml', 0.95)).toMatchObject({ reason: 'no-data' });
    expect(fixedEffect([])).toMatchObject({ reason: 'no-data' });
    expect(heterogeneity(one, 0.95)).toMatchObject({ q: 0, pValue: { reason: 'too-few-observations' } });
    expect(() => pooledMean([...one, ...one], 'reml', 0.95)).toThrow(/"a" occurs twice/);
    expect(() => pooledMean([{ label: 'a', estimate: 1, variance: 0 }], 'reml', 0.95)).toThrow(/variance/);
    expect(() => pooledMean([{ label: 'a', estimate: Number.NaN, variance: 1 }], 'reml', 0.95)).toThrow(
      /estimate/,
    );
  });
});
