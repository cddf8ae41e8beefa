import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breslowDay } from '@/lib/stats/stratified/breslow-day';
import { cochranMantelHaenszel } from '@/lib/stats/stratified/cochran-mantel-haenszel';
import { mantelHaenszelOddsRatio } from '@/lib/stats/stratified/mantel-haenszel-odds-ratio';
import { mantelHaenszelRiskDifference } from '@/lib/stats/stratified/mantel-haenszel-risk-difference';
import { mantelHaenszelRiskRatio } from '@/lib/stats/stratified/mantel-haenszel-risk-ratio';
import type { Stratum } from '@/lib/stats/stratified/stratum';

const stratum = fc
  .record({ units1: fc.integer({ min: 0, max: 60 }), units2: fc.integer({ min: 0, max: 60 }) })
  .chain(({ units1, units2 }) =>
    fc.record({
      units1: fc.constant(units1),
      units2: fc.constant(units2),
      events1: fc.integer({ min: 0, max: units1 }),
      events2: fc.integer({ min: 0, max: units2 }),
    }),
  );
const strata = fc
  .array(stratum, { minLength: 1, maxLength: 8 })
  .map((rows): Stratum[] => rows.map((row, index) => ({ label: `site ${index}`, ...row })));

const all = (rows: readonly Stratum[]) => ({
  oddsRatio: mantelHaenszelOddsRatio(rows, 0.95),
  riskRatio: mantelHaenszelRiskRatio(rows, 0.95),
  difference: mantelHaenszelRiskDifference(rows, 0.95),
  test: cochranMantelHaenszel(rows, true),
  homogeneity: breslowDay(rows, true),
});

/** Leaves of an answer, rounded so that sums in another order agree. */
function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, leaf: unknown) => (typeof leaf === 'number' ? leaf.toPrecision(9) : leaf)),
  );
}

const swapped = (rows: readonly Stratum[]) =>
  rows.map(({ label, events1, units1, events2, units2 }) => ({
    label,
    events1: events2,
    units1: units2,
    events2: events1,
    units2: units1,
  }));

describe('comparison over strata', () => {
  it('does not depend on the order or the names of the strata', () => {
    fc.assert(
      fc.property(strata, (rows) => {
        const other = rows.toReversed().map((row, index) => ({ ...row, label: `other ${index}` }));
        expect(rounded(all(other))).toEqual(rounded(all(rows)));
      }),
    );
  });

  it('is not changed by an empty stratum', () => {
    fc.assert(
      fc.property(strata, (rows) => {
        const empty = { label: 'empty', events1: 0, units1: 0, events2: 0, units2: 0 };
        expect(all([...rows, empty])).toEqual(all(rows));
      }),
    );
  });

  it('turns ratios upside down and differences round when the groups change places', () => {
    fc.assert(
      fc.property(strata, (rows) => {
        const [one, other] = [all(rows), all(swapped(rows))];
        for (const name of ['oddsRatio', 'riskRatio'] as const) {
          const [a, b] = [one[name], other[name]];
          expect(a.kind).toBe(b.kind);
          if (a.kind === 'cannot-compute' || b.kind === 'cannot-compute') continue;
          if (a.estimate > 0 && Number.isFinite(a.estimate))
            expect(a.estimate * b.estimate).toBeCloseTo(1, 8);
          if (a.interval.kind === 'interval' && b.interval.kind === 'interval') {
            expect(a.interval.low * b.interval.high).toBeCloseTo(1, 8);
          }
        }
        if (one.difference.kind === 'estimate' && other.difference.kind === 'estimate') {
          expect(one.difference.estimate).toBeCloseTo(-other.difference.estimate, 12);
          expect(one.difference.standardError).toBeCloseTo(Number(other.difference.standardError), 12);
        }
        if (one.test.kind === 'test' && other.test.kind === 'test') {
          expect(one.test.statistic).toBeCloseTo(other.test.statistic, 8);
        }
      }),
    );
  });

  it('never answers with NaN', () => {
    fc.assert(
      fc.property(strata, (rows) => {
        expect(JSON.stringify(all(rows), (_, leaf) => (Number.isNaN(leaf) ? 'NaN' : leaf))).not.toContain(
          'NaN',
        );
      }),
    );
  });

  it('gives the plain ratio of discordant pairs for matched pairs', () => {
    const pair = (index: number, events1: number, events2: number) => ({
      label: `pair ${index}`,
      events1,
      units1: 1,
      events2,
      units2: 1,
    });
    const pairs = [pair(0, 1, 0), pair(1, 1, 0), pair(2, 1, 0), pair(3, 0, 1), pair(4, 1, 1), pair(5, 0, 0)];
    expect(mantelHaenszelOddsRatio(pairs, 0.95)).toMatchObject({ estimate: 3 });
  });

  it('gives the published answers for the graduate admissions of Berkeley in 1973', () => {
    // Bickel, Hammel & O'Connell (1975, Science 187, 398-404); answers as on the help page of R's mantelhaen.test
    // (from memory): common odds ratio 0.9046968, 95 % limits 0.7719074 and 1.0603298, X-squared 1.4269.
    const admissions: Stratum[] = [
      ['A', 512, 825, 89, 108],
      ['B', 353, 560, 17, 25],
      ['C', 120, 325, 202, 593],
      ['D', 138, 417, 131, 375],
      ['E', 53, 191, 94, 393],
      ['F', 22, 373, 24, 341],
    ].map(([label, events1, units1, events2, units2]) => ({
      label: String(label),
      events1: Number(events1),
      units1: Number(units1),
      events2: Number(events2),
      units2: Number(units2),
    }));
    const ratio = mantelHaenszelOddsRatio(admissions, 0.95);
    if (ratio.kind !== 'estimate' || ratio.interval.kind !== 'interval') throw new Error('no ratio');
    expect(ratio.estimate).toBeCloseTo(0.9046968, 7);
    expect(ratio.interval.low).toBeCloseTo(0.7719074, 7);
    expect(ratio.interval.high).toBeCloseTo(1.0603298, 7);
    expect(ratio.units).toBe(4526);
    expect(cochranMantelHaenszel(admissions, true)).toMatchObject({ statistic: expect.closeTo(1.4269, 4) });
  });

  it('says why there is no ratio, and keeps the difference, when a group has no event', () => {
    const rows = [{ label: 'a', events1: 0, units1: 12, events2: 3, units2: 14 }];
    expect(mantelHaenszelOddsRatio(rows, 0.95)).toMatchObject({
      estimate: 0,
      interval: { reason: 'separation' },
    });
    expect(mantelHaenszelOddsRatio(swapped(rows), 0.95)).toMatchObject({
      estimate: Number.POSITIVE_INFINITY,
    });
    expect(mantelHaenszelRiskDifference(rows, 0.95)).toMatchObject({ estimate: -3 / 14 });
    expect(breslowDay(rows, true)).toMatchObject({ reason: 'too-few-observations' });
  });

  it('cannot compare groups that never share a stratum', () => {
    const rows = [
      { label: 'a', events1: 3, units1: 12, events2: 0, units2: 0 },
      { label: 'b', events1: 0, units1: 0, events2: 5, units2: 12 },
    ];
    expect(all(rows)).toMatchObject({
      oddsRatio: { reason: 'not-identifiable' },
      riskRatio: { reason: 'not-identifiable' },
      difference: { reason: 'not-identifiable' },
      test: { reason: 'no-variation' },
    });
    expect(mantelHaenszelRiskRatio([], 0.95)).toMatchObject({ reason: 'not-identifiable' });
  });

  it('holds with a thousand million units', () => {
    const rows = [{ label: 'a', events1: 2e8, units1: 1e9, events2: 1e8, units2: 1e9 }];
    expect(mantelHaenszelRiskRatio(rows, 0.95)).toMatchObject({ estimate: expect.closeTo(2, 12) });
    expect(cochranMantelHaenszel(rows, false)).toMatchObject({ pValue: 0 });
  });

  it.each([
    [{ label: 'a', events1: 5, units1: 4, events2: 0, units2: 3 }, /events1/],
    [{ label: 'a', events1: -1, units1: 4, events2: 0, units2: 3 }, /events1/],
    [{ label: 'a', events1: Number.NaN, units1: 4, events2: 0, units2: 3 }, /events1/],
    [{ label: 'a', events1: 1, units1: 4, events2: 0.5, units2: 3 }, /events2/],
    [{ label: 'b', events1: 1, units1: 4, events2: 1, units2: 3 }, /"b" occurs twice/],
  ])('names what is wrong with the stratum %j', (bad, problem) => {
    const rows = [bad, { label: 'b', events1: 1, units1: 2, events2: 1, units2: 2 }];
    for (const estimate of [mantelHaenszelOddsRatio, mantelHaenszelRiskRatio]) {
      expect(() => estimate(rows, 0.95)).toThrow(problem);
    }
    expect(() => mantelHaenszelOddsRatio([], 1)).toThrow(/level/);
  });
});
