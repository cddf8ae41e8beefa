import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boschlooTest } from '@/lib/stats/proportion/boschloo-test';
import { chiSquareTest } from '@/lib/stats/proportion/chi-square-test';
import { fisherExact } from '@/lib/stats/proportion/fisher-exact';
import { newcombeDifference } from '@/lib/stats/proportion/newcombe-difference';
import { oddsRatio, oddsRatioHalfAdded } from '@/lib/stats/proportion/odds-ratio';
import { riskRatio, riskRatioHalfAdded } from '@/lib/stats/proportion/risk-ratio';

const group = fc
  .integer({ min: 1, max: 60 })
  .chain((trials) => fc.record({ events: fc.integer({ min: 0, max: trials }), trials: fc.constant(trials) }));

const counts = (events: number, trials: number) => ({ events, trials });

describe('the difference of two proportions', () => {
  // Newcombe (1998), Statistics in Medicine 17:873-890, table II, method 10, four decimals.
  it.each([
    [56, 70, 48, 80, 0.0524, 0.3339],
    [9, 10, 3, 10, 0.1705, 0.809],
    [10, 10, 0, 20, 0.6791, 1],
    [10, 10, 0, 10, 0.6075, 1],
  ])('gives %d of %d against %d of %d the limits of table II', (x1, n1, x2, n2, low, high) => {
    const answer = newcombeDifference(counts(x1, n1), counts(x2, n2), 0.95);
    if (answer.kind !== 'estimate' || answer.interval.kind !== 'interval') throw new Error('no interval');
    expect(answer.interval.low).toBeCloseTo(low, 4);
    expect(answer.interval.high).toBeCloseTo(high, 4);
  });

  it('turns its sign when the groups change places, and stays within -1 and 1', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const one = newcombeDifference(first, second, 0.95);
        const other = newcombeDifference(second, first, 0.95);
        if (one.kind !== 'estimate' || one.interval.kind !== 'interval') throw new Error('no interval');
        if (other.kind !== 'estimate' || other.interval.kind !== 'interval') throw new Error('no interval');
        expect(other.interval.low).toBeCloseTo(-one.interval.high, 12);
        expect(one.interval.low).toBeGreaterThanOrEqual(-1 - 1e-12);
        expect(one.interval.high).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  it('answers an empty group by a reason', () => {
    const answer = newcombeDifference(counts(0, 0), counts(1, 2), 0.95);
    expect(answer).toMatchObject({ kind: 'cannot-compute', reason: 'no-data' });
  });
});

describe('ratios of two proportions', () => {
  it('are reciprocal when the groups change places', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        for (const ratio of [riskRatioHalfAdded, oddsRatioHalfAdded]) {
          const one = ratio(first, second, 0.95);
          const other = ratio(second, first, 0.95);
          if (one.kind !== 'estimate' || one.interval.kind !== 'interval') throw new Error('no interval');
          if (other.kind !== 'estimate' || other.interval.kind !== 'interval') throw new Error('no interval');
          expect(one.estimate * other.estimate).toBeCloseTo(1, 10);
          expect(one.interval.low * other.interval.high).toBeCloseTo(1, 10);
        }
      }),
    );
  });

  it('say why there is no interval when a group has no events', () => {
    expect(riskRatio(counts(0, 5), counts(2, 5), 0.95)).toMatchObject({
      kind: 'estimate',
      estimate: 0,
      interval: { kind: 'cannot-compute', reason: 'zero-denominator' },
    });
    expect(riskRatio(counts(0, 5), counts(0, 5), 0.95)).toMatchObject({ reason: 'zero-denominator' });
    expect(oddsRatio(counts(5, 5), counts(2, 5), 0.95)).toMatchObject({ reason: 'zero-denominator' });
  });
});

describe('tests of two proportions', () => {
  it("gives Fisher's tea tasting its p-value and odds ratio", () => {
    // Fisher (1935): 3 of 4 cups right; two-sided 34/70. The odds ratio is that of R, to the digits it has right.
    const answer = fisherExact(counts(3, 4), counts(1, 4), 0.95);
    if (answer.kind !== 'test') throw new Error(answer.explanation);
    expect(answer.pValue).toBeCloseTo(34 / 70, 12);
    expect(answer.oddsRatio).toBeCloseTo(6.408309, 4);
    expect(answer.interval.low).toBeCloseTo(0.2117, 4);
    // R's own root search stops at 621.93; at the limit, all four right has probability 0.975.
    const odds = answer.interval.high;
    const all = 1 + 16 * odds + 36 * odds ** 2 + 16 * odds ** 3 + odds ** 4;
    expect(odds ** 4 / all).toBeCloseTo(0.975, 12);
  });

  it('does not depend on which group comes first or which outcome counts', () => {
    fc.assert(
      fc.property(group, group, (first, second) => {
        const turned = (of: typeof first) => counts(of.trials - of.events, of.trials);
        const p = (answer: ReturnType<typeof fisherExact>) => (answer.kind === 'test' ? answer.pValue : -1);
        const own = p(fisherExact(first, second, 0.95));
        expect(p(fisherExact(second, first, 0.95))).toBeCloseTo(own, 10);
        expect(p(fisherExact(turned(first), turned(second), 0.95))).toBeCloseTo(own, 10);
      }),
    );
  });

  it("keeps Boschloo's test below Fisher's p-value and exact at its worst proportion", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 9 }), (x1, x2) => {
        const first = counts(x1, 8);
        const second = counts(x2, 9);
        const boschloo = boschlooTest(first, second);
        const fisher = fisherExact(first, second, 0.95);
        if (boschloo.kind !== 'test' || fisher.kind !== 'test') throw new Error('no test');
        expect(boschloo.pValue).toBeLessThanOrEqual(fisher.pValue + 1e-9);
      }),
      { numRuns: 15 },
    );
  });

  it('answers the same outcome throughout by a reason, and too large groups for the exact test too', () => {
    expect(chiSquareTest(counts(0, 5), counts(0, 9), false)).toMatchObject({ reason: 'no-variation' });
    expect(boschlooTest(counts(1, 200), counts(1, 200))).toMatchObject({ reason: 'out-of-range' });
    expect(fisherExact(counts(0, 5), counts(0, 9), 0.95)).toMatchObject({
      pValue: 1,
      oddsRatio: { reason: 'no-variation' },
    });
  });

  it('refuses more events than trials, by name', () => {
    expect(() => fisherExact(counts(6, 5), counts(1, 5), 0.95)).toThrow(/^first\.events:/);
    expect(() => chiSquareTest(counts(1, 5), counts(1, -5), false)).toThrow(/^second\.trials:/);
  });
});
