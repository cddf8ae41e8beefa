import { describe, expect, it } from 'vitest';
import { meanOfRatios } from '@/lib/stats/ratio/mean-of-ratios';

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
