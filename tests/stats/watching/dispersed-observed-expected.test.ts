import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ArgumentError } from '@/lib/stats/outcome';
import { dispersedObservedExpected } from '@/lib/stats/watching/dispersed-observed-expected';
import { observedExpected } from '@/lib/stats/watching/observed-expected';

function answerOf(observed: number, expected: number, dispersion: number) {
  const answer = dispersedObservedExpected(observed, expected, dispersion, 0.95);
  if (answer.kind !== 'estimate') throw new Error(answer.explanation);
  return answer;
}

describe('dispersedObservedExpected', () => {
  it('is the exact Poisson answer where events come one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400 }),
        fc.double({ min: 0.1, max: 300, noNaN: true }),
        (o, e) => {
          const [own, exact] = [answerOf(o, e, 1), observedExpected(o, e, 0.95)];
          if (exact.kind !== 'estimate') throw new Error('no ratio');
          expect(own.interval.low).toBeCloseTo(exact.exactInterval.low, 9);
          expect(own.interval.high).toBeCloseTo(exact.exactInterval.high, 9);
          expect(own.pUpper).toBeCloseTo(exact.tails.upper, 9);
          expect(own.pLower).toBeCloseTo(exact.tails.lower, 9);
        },
      ),
    );
  });

  it('grows more cautious as events come in larger clumps', () => {
    const [few, many] = [answerOf(60, 30, 2), answerOf(60, 30, 6)];
    expect(many.interval.low).toBeLessThan(few.interval.low);
    expect(many.interval.high).toBeGreaterThan(few.interval.high);
    expect(many.pUpper).toBeGreaterThan(few.pUpper);
  });

  it('says the same of clumps of c events as of single events, c times fewer', () => {
    const [clumped, single] = [answerOf(40, 20, 4), answerOf(10, 5, 1)];
    expect(clumped.interval).toEqual(single.interval);
    expect(clumped.pUpper).toBe(single.pUpper);
  });

  it('takes a dispersion below 1 as 1, and has a lower limit of 0 at no event', () => {
    expect(answerOf(4, 6, 0.2)).toEqual(answerOf(4, 6, 1));
    expect(answerOf(0, 6, 3)).toMatchObject({ interval: { low: 0 }, pUpper: 1 });
  });

  it('gives a reason when nothing was expected, and names a wrong argument', () => {
    expect(dispersedObservedExpected(2, 0, 1, 0.95)).toMatchObject({ reason: 'zero-denominator' });
    expect(() => dispersedObservedExpected(1.5, 2, 1, 0.95)).toThrow(ArgumentError);
    expect(() => dispersedObservedExpected(1, 2, Number.NaN, 0.95)).toThrow(/dispersion/);
    expect(() => dispersedObservedExpected(1, 2, 1, 1)).toThrow(/level/);
  });
});
