import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { meanOfRatios } from '@/lib/stats/ratio/mean-of-ratios';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { batchRows, columns } from './batch-rows';

describe('jackknifeRatio', () => {
  it('has the linearised standard error where all clusters have one size, times k / (k - 1)', () => {
    const rows = { numerator: [6, 7, 9, 5], denominator: [10, 10, 10, 10], cluster: ['a', 'b', 'c', 'd'] };
    const [jackknife, plain] = [jackknifeRatio({ ...rows, level: 0.95 }), ratioOfSums(rows)];
    if (jackknife.kind !== 'estimate' || plain.kind !== 'estimate') throw new Error('no ratio');
    // (R_(-i) - R) = -(Y_i - R X) / ((k-1) X), so both variances are the same sum of squares.
    expect(jackknife.standardErrorAboutEstimate).toBeCloseTo(Number(plain.standardError), 12);
    expect(jackknife.standardErrorAboutMean).toBeCloseTo(Number(plain.standardError), 12);
  });

  it('is never smaller about the estimate than about the mean of the replicates', () => {
    fc.assert(
      fc.property(batchRows, (rows) => {
        const answer = jackknifeRatio(columns(rows));
        if (answer.kind !== 'estimate') return;
        expect(answer.standardErrorAboutEstimate).toBeGreaterThanOrEqual(
          answer.standardErrorAboutMean - 1e-12,
        );
      }),
    );
  });

  it('answers what cannot be left out by its reason', () => {
    const one = { numerator: [4, 3], denominator: [6, 5], cluster: ['a', 'a'], level: 0.95 };
    expect(jackknifeRatio(one)).toMatchObject({ reason: 'too-few-clusters' });
    expect(jackknifeRatio({ ...one, cluster: ['a', 'b'], denominator: [6, 0] })).toMatchObject({
      reason: 'zero-denominator',
    });
    expect(jackknifeRatio({ ...one, denominator: [0, 0] })).toMatchObject({ reason: 'zero-denominator' });
    expect(jackknifeRatio({ numerator: [], denominator: [], cluster: [], level: 0.95 })).toMatchObject({
      reason: 'no-data',
    });
  });
});

describe('meanOfRatios', () => {
  it('is the mean of the batches that have dry mass, with sd / sqrt(n), and counts the others', () => {
    const answer = meanOfRatios({ numerator: [5, 10, 0, 6], denominator: [10, 10, 0, 10], level: 0.95 });
    if (answer.kind !== 'estimate') throw new Error('no mean');
    expect(answer.estimate).toBeCloseTo(0.7, 12);
    expect(answer.standardError).toBeCloseTo(Math.sqrt((0.04 + 0.09 + 0.01) / 2 / 3), 12);
    expect(answer).toMatchObject({ rows: 3, rowsLeftOut: 1 });
  });

  it('gives one batch without an interval and none by its reason', () => {
    const one = meanOfRatios({ numerator: [5], denominator: [10], level: 0.95 });
    expect(one).toMatchObject({ estimate: 0.5, interval: { reason: 'too-few-observations' } });
    expect(meanOfRatios({ numerator: [5], denominator: [0], level: 0.95 })).toMatchObject({
      reason: 'no-data',
    });
  });

  it('names the argument that cannot be', () => {
    expect(() => meanOfRatios({ numerator: [-5], denominator: [10], level: 0.95 })).toThrow(
      /^numerator\[0\]/,
    );
    expect(() => meanOfRatios({ numerator: [5], denominator: [], level: 0.95 })).toThrow(/^denominator/);
    expect(() => meanOfRatios({ numerator: [5], denominator: [1], level: Number.NaN })).toThrow(/^level/);
  });
});
