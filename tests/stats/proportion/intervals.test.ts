import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ArgumentError } from '@/lib/stats/outcome';
import { clopperPearsonInterval } from '@/lib/stats/proportion/clopper-pearson-interval';
import { jeffreysInterval } from '@/lib/stats/proportion/jeffreys-interval';
import { midPInterval } from '@/lib/stats/proportion/mid-p-interval';
import { oneProportion } from '@/lib/stats/proportion/one-proportion';
import { wilsonContinuityInterval } from '@/lib/stats/proportion/wilson-continuity-interval';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';

const within = [
  ['Wilson', wilsonInterval],
  ['Wilson with continuity correction', wilsonContinuityInterval],
  ['Clopper-Pearson', clopperPearsonInterval],
  ['mid-P', midPInterval],
  ['Jeffreys', jeffreysInterval],
] as const;

const counts = fc
  .integer({ min: 1, max: 400 })
  .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

function limits(answer: ReturnType<typeof wilsonInterval>): { low: number; high: number } {
  if (answer.kind !== 'interval') throw new Error(answer.explanation);
  return answer;
}

describe.each(within)('%s interval of one proportion', (_name, interval) => {
  it('lies within 0 and 1 about the proportion, with width', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const { low, high } = limits(interval(x, n, 0.95));
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(x / n);
        expect(high).toBeGreaterThanOrEqual(x / n);
        expect(high).toBeGreaterThan(low);
      }),
    );
  });

  it('mirrors when events and others change places', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const one = limits(interval(x, n, 0.9));
        const other = limits(interval(n - x, n, 0.9));
        expect(1 - other.high).toBeCloseTo(one.low, 11);
        expect(1 - other.low).toBeCloseTo(one.high, 11);
      }),
    );
  });

  it('widens with the level', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const narrow = limits(interval(x, n, 0.8));
        const wide = limits(interval(x, n, 0.99));
        expect(wide.low).toBeLessThanOrEqual(narrow.low);
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high);
      }),
    );
  });

  it('is exactly 0 below at no events and 1 above at all', () => {
    expect(limits(interval(0, 17, 0.95)).low).toBe(0);
    expect(limits(interval(17, 17, 0.95)).high).toBe(1);
  });

  it('answers no units by a reason, and refuses impossible counts and levels by name', () => {
    expect(interval(0, 0, 0.95)).toMatchObject({ kind: 'cannot-compute', reason: 'no-data' });
    expect(() => interval(-1, 5, 0.95)).toThrow(ArgumentError);
    expect(() => interval(6, 5, 0.95)).toThrow(/^x:/);
    expect(() => interval(1, Number.NaN, 0.95)).toThrow(/^n:/);
    expect(() => interval(1, 5, 1)).toThrow(/^level:/);
  });
});

describe('published intervals of one proportion', () => {
  // Newcombe (1998), Statistics in Medicine 17:857-872, table I, four decimals.
  it.each([
    [81, 263, 0.2553, 0.3662, 0.2527, 0.3676],
    [15, 148, 0.0624, 0.1605, 0.0578, 0.1617],
    [0, 20, 0, 0.1611, 0, 0.1684],
    [1, 29, 0.0061, 0.1718, 0.0009, 0.1776],
  ])('gives %d of %d the limits of table I', (x, n, wilsonLow, wilsonHigh, exactLow, exactHigh) => {
    const wilson = limits(wilsonInterval(x, n, 0.95));
    expect(wilson.low).toBeCloseTo(wilsonLow, 4);
    expect(wilson.high).toBeCloseTo(wilsonHigh, 4);
    const exact = limits(clopperPearsonInterval(x, n, 0.95));
    expect(exact.low).toBeCloseTo(exactLow, 4);
    expect(exact.high).toBeCloseTo(exactHigh, 4);
  });

  it('carries estimate, interval, method and counts', () => {
    expect(oneProportion({ events: 3, trials: 12 }, 0.95)).toMatchObject({
      kind: 'estimate',
      estimate: 0.25,
      events: 3,
      trials: 12,
      interval: { kind: 'interval', method: 'Wilson score', level: 0.95 },
    });
  });
});
