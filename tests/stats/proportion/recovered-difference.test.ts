import { describe, expect, it } from 'vitest';
import { newcombeDifference } from '@/lib/stats/proportion/newcombe-difference';
import { recoveredDifference } from '@/lib/stats/proportion/recovered-difference';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';

function limited(events: number, trials: number) {
  const interval = wilsonInterval(events, trials, 0.95);
  if (interval.kind === 'cannot-compute') throw new Error(interval.explanation);
  return { estimate: events / trials, low: interval.low, high: interval.high };
}

describe('the difference recovered from limits of both proportions', () => {
  it("is Newcombe's hybrid score interval for independent proportions with Wilson's limits", () => {
    const answer = recoveredDifference(limited(56, 70), limited(48, 80), 0, 0.95);
    const newcombe = newcombeDifference({ events: 56, trials: 70 }, { events: 48, trials: 80 }, 0.95);
    expect(newcombe).toMatchObject({
      estimate: answer.estimate,
      interval: { low: answer.interval.low, high: answer.interval.high },
    });
    // Newcombe (1998), table II, example (a): 0.0524 to 0.3339.
    expect(answer.interval.low).toBeCloseTo(0.0524, 4);
    expect(answer.interval.high).toBeCloseTo(0.3339, 4);
  });

  it('is narrower the more of their error the two share, and turns about with its sides', () => {
    const widths = [0, 0.5, 0.9].map((correlation) => {
      const { interval } = recoveredDifference(limited(20, 100), limited(12, 100), correlation, 0.95);
      const other = recoveredDifference(limited(12, 100), limited(20, 100), correlation, 0.95).interval;
      expect(other.low).toBeCloseTo(-interval.high, 12);
      return interval.high - interval.low;
    });
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(new Set(widths).size).toBe(3);
  });

  it('refuses limits that do not hold their estimate and a correlation that is none', () => {
    const fine = { estimate: 0.2, low: 0.1, high: 0.3 };
    expect(() => recoveredDifference({ ...fine, low: 0.25 }, fine, 0, 0.95)).toThrow(/^first:/);
    expect(() => recoveredDifference(fine, fine, 1.2, 0.95)).toThrow(/^correlation:/);
  });
});
