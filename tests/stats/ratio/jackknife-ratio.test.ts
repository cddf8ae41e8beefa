import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { batchRows, columns } from './batch-rows';

describe('jackknifeRatio', () => {
  it('has the linearised standard error where all clusters have one size', () => {
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
