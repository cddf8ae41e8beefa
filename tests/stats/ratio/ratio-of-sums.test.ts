import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { type RatioOfSums, ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { batchRows, columns, inKilograms, rearranged } from './batch-rows';

function ratioOf(rows: Parameters<typeof ratioOfSums>[0]): RatioOfSums {
  const answer = ratioOfSums(rows);
  if (answer.kind !== 'estimate') throw new Error(`no ratio: ${answer.explanation}`);
  return answer;
}

/** Populations (thousands) of 49 cities in 1930 and 1920: Cochran (1977), Sampling Techniques, page 152. */
const cities1930 = [
  143, 104, 69, 260, 75, 63, 50, 48, 111, 50, 52, 53, 79, 57, 317, 93, 58, 80, 464, 459, 106, 57, 634, 64, 89,
  77, 60, 139, 291, 288, 85, 46, 53, 67, 115, 183, 86, 65, 113, 58, 63, 142, 64, 130, 105, 61, 50, 232, 54,
];
const cities1920 = [
  138, 93, 61, 179, 48, 37, 29, 23, 30, 2, 38, 46, 71, 25, 298, 74, 50, 76, 381, 387, 78, 60, 507, 50, 77, 64,
  40, 136, 243, 256, 94, 36, 45, 67, 120, 172, 66, 46, 121, 44, 64, 56, 40, 116, 87, 43, 43, 161, 36,
];

describe('ratioOfSums', () => {
  it("finds the growth of Cochran's 49 cities, 1.239 (1977, page 152; value from memory)", () => {
    const answer = ratioOf({
      numerator: cities1930,
      denominator: cities1920,
      cluster: cities1930.map((_, city) => String(city)),
    });
    expect(answer.estimate).toBeCloseTo(1.239, 3);
    expect(answer).toMatchObject({ rows: 49, clusters: 49, degreesOfFreedom: 48, sumNumerator: 6262 });
  });

  it('weighs every gram alike, unlike the mean of the batches', () => {
    const answer = ratioOf({ numerator: [900, 100], denominator: [1000, 1000], cluster: ['a', 'b'] });
    expect(answer.estimate).toBe(0.5);
    expect(ratioOf({ numerator: [900, 10], denominator: [1000, 100], cluster: ['a', 'b'] }).estimate).toBe(
      910 / 1100,
    );
  });

  it('adds up the rows of a cluster before it looks for spread', () => {
    const within = ratioOf({
      numerator: [100, 900, 100, 900],
      denominator: [1000, 1000, 1000, 1000],
      cluster: ['a', 'a', 'b', 'b'],
    });
    expect(within.clusters).toBe(2);
    expect(within.standardError).toBe(0);
  });

  it('keeps the estimate and gives a reason for the interval when there is one cluster', () => {
    const answer = ratioOf({ numerator: [4, 3], denominator: [6, 5], cluster: ['site', 'site'] });
    expect(answer.estimate).toBeCloseTo(7 / 11, 15);
    expect(answer.degreesOfFreedom).toBe(0);
    for (const part of [answer.interval, answer.linearisedInterval, answer.standardError]) {
      expect(part).toMatchObject({ kind: 'cannot-compute', reason: 'too-few-clusters' });
    }
  });

  it('answers no rows and a denominator of zero with a reason', () => {
    expect(ratioOfSums({ numerator: [], denominator: [], cluster: [] })).toMatchObject({ reason: 'no-data' });
    expect(ratioOfSums({ numerator: [5, 0], denominator: [0, 0], cluster: ['a', 'b'] })).toMatchObject({
      reason: 'zero-denominator',
    });
  });

  it('falls back to the linearised interval when one cluster holds the whole denominator', () => {
    const answer = ratioOf({ numerator: [4, 1], denominator: [6, 0], cluster: ['a', 'b'] });
    expect(answer.interval).toEqual(answer.linearisedInterval);
  });

  it('counts a cluster without dry mass, as total losses and empty sites are part of the sum', () => {
    const answer = ratioOf({ numerator: [4, 0, 3], denominator: [6, 0, 5], cluster: ['a', 'b', 'c'] });
    expect(answer.clusters).toBe(3);
    expect(answer.estimate).toBeCloseTo(7 / 11, 15);
  });

  it('has the interval of the jackknife on clusters - 1 degrees of freedom when clusters are of one size', () => {
    const rows = {
      numerator: [700, 750, 800, 850, 900],
      denominator: [1000, 1000, 1000, 1000, 1000],
      cluster: ['a', 'b', 'c', 'd', 'e'],
      level: 0.95,
    };
    const jackknife = jackknifeRatio(rows);
    const { interval } = ratioOf(rows);
    if (jackknife.kind !== 'estimate' || interval.kind !== 'interval') throw new Error('no interval');
    expect(interval.low).toBeCloseTo(jackknife.interval.low, 10);
    expect(interval.high).toBeCloseTo(jackknife.interval.high, 10);
  });

  it('allows for clusters of unequal size by fewer degrees of freedom', () => {
    const rows = {
      numerator: [5000, 900, 700, 650],
      denominator: [8000, 1000, 1000, 900],
      cluster: ['a', 'b', 'c', 'd'],
      level: 0.95,
    };
    const jackknife = jackknifeRatio(rows);
    const { interval } = ratioOf(rows);
    if (jackknife.kind !== 'estimate') throw new Error('no ratio');
    if (interval.kind !== 'interval') throw new Error('no interval');
    expect(interval.high - interval.low).toBeGreaterThan(
      1.2 * (jackknife.interval.high - jackknife.interval.low),
    );
  });

  it('has an interval about the estimate, never narrower than the linearised one on as many clusters', () => {
    fc.assert(
      fc.property(batchRows, (rows) => {
        const answer = ratioOfSums(columns(rows));
        if (answer.kind !== 'estimate') return;
        const { interval, linearisedInterval } = answer;
        if (interval.kind !== 'interval' || linearisedInterval.kind !== 'interval') {
          expect(answer.clusters).toBe(1);
          return;
        }
        expect(interval.low).toBeLessThanOrEqual(answer.estimate + 1e-12);
        expect(interval.high).toBeGreaterThanOrEqual(answer.estimate - 1e-12);
        const jackknife = jackknifeRatio(columns(rows));
        if (jackknife.kind !== 'estimate') return;
        expect(interval.high).toBeGreaterThanOrEqual(jackknife.interval.high - 1e-9);
      }),
    );
  });

  it('does not depend on the order of rows, on their being split, on names, or on the unit of weight', () => {
    fc.assert(
      fc.property(batchRows, (rows) => {
        const one = ratioOfSums(columns(rows));
        const other = ratioOfSums(columns(inKilograms(rearranged(rows))));
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.estimate).toBeCloseTo(one.estimate, 10);
        expect(other.clusters).toBe(one.clusters);
        if (one.interval.kind !== 'interval' || other.interval.kind !== 'interval') return;
        expect(other.interval.low).toBeCloseTo(one.interval.low, 7);
        expect(other.interval.high).toBeCloseTo(one.interval.high, 7);
        expect(Number(other.standardError)).toBeCloseTo(Number(one.standardError), 9);
      }),
    );
  });

  it('is in proportion to the fresh weight', () => {
    fc.assert(
      fc.property(batchRows, fc.double({ min: 0.01, max: 100, noNaN: true }), (rows, factor) => {
        const one = ratioOfSums(columns(rows));
        const other = ratioOfSums(columns(rows.map((row) => ({ ...row, fresh: row.fresh * factor }))));
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.estimate / factor).toBeCloseTo(one.estimate, 9);
        if (one.clusters < 2) return;
        expect(Number(other.standardError) / factor).toBeCloseTo(Number(one.standardError), 9);
      }),
    );
  });

  it('names the argument that cannot be', () => {
    const rows = { numerator: [4, 3], denominator: [6, 5], cluster: ['a', 'b'] };
    expect(() => ratioOfSums({ ...rows, numerator: [4, Number.NaN] })).toThrow(/^numerator\[1\]/);
    expect(() => ratioOfSums({ ...rows, denominator: [-6, 5] })).toThrow(/^denominator\[0\]/);
    expect(() => ratioOfSums({ ...rows, denominator: [Number.POSITIVE_INFINITY, 5] })).toThrow(
      /^denominator\[0\]/,
    );
    expect(() => ratioOfSums({ ...rows, denominator: [6] })).toThrow(/^denominator/);
    expect(() => ratioOfSums({ ...rows, cluster: ['a'] })).toThrow(/^cluster/);
    expect(() => ratioOfSums({ ...rows, level: 0 })).toThrow(/^level/);
  });
});
