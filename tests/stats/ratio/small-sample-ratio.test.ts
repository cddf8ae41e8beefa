import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { smallSampleRatio } from '@/lib/stats/ratio/small-sample-ratio';

const batches = fc.array(
  fc.record({
    fresh: fc.integer({ min: 0, max: 9000 }),
    dry: fc.integer({ min: 100, max: 8000 }),
    site: fc.constantFrom('Alder', 'Birch', 'Cedar', 'Dogwood'),
  }),
  { minLength: 2, maxLength: 20 },
);
type Batches = { fresh: number; dry: number; site: string }[];
const columns = (rows: Batches) => ({
  numerator: rows.map(({ fresh }) => fresh),
  denominator: rows.map(({ dry }) => dry),
  cluster: rows.map(({ site }) => site),
  level: 0.95,
});

describe('smallSampleRatio', () => {
  it('has clusters - 1 degrees of freedom for clusters of one size, and the interval of the jackknife', () => {
    const rows = ['a', 'b', 'c', 'd', 'e'].map((site, index) => ({
      site,
      dry: 1000,
      fresh: 700 + 50 * index,
    }));
    const answer = smallSampleRatio(columns(rows));
    const plain = jackknifeRatio(columns(rows));
    if (answer.kind !== 'estimate' || plain.kind !== 'estimate') throw new Error('no ratio');
    expect(answer.df).toBeCloseTo(4, 12);
    expect(answer.interval.low).toBeCloseTo(plain.interval.low, 10);
  });

  it('never has more than clusters - 1 degrees of freedom, nor a narrower interval than the jackknife', () => {
    fc.assert(
      fc.property(batches, (rows) => {
        const answer = smallSampleRatio(columns(rows));
        const plain = jackknifeRatio(columns(rows));
        if (answer.kind !== 'estimate' || plain.kind !== 'estimate') {
          expect(answer).toEqual(plain);
          return;
        }
        expect(answer.df).toBeLessThanOrEqual(answer.clusters - 1 + 1e-9);
        expect(answer.df).toBeGreaterThan(0.9);
        expect(answer.interval.low).toBeLessThanOrEqual(plain.interval.low + 1e-9);
      }),
    );
  });

  it('does not depend on the order of batches, on their being split, or on the unit of weight', () => {
    fc.assert(
      fc.property(batches, (rows) => {
        const half = rows.flatMap((row) => [
          { ...row, fresh: row.fresh / 2, dry: row.dry / 2 },
          { ...row, fresh: row.fresh / 2, dry: row.dry / 2 },
        ]);
        const kilograms = half
          .toReversed()
          .map((row) => ({ ...row, fresh: row.fresh / 1000, dry: row.dry / 1000 }));
        const [one, other] = [smallSampleRatio(columns(rows)), smallSampleRatio(columns(kilograms))];
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.interval.high).toBeCloseTo(one.interval.high, 6);
        expect(other.df).toBeCloseTo(one.df, 8);
      }),
    );
  });
});
