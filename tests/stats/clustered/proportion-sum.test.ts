import { describe, expect, it } from 'vitest';
import { proportionSum } from '@/lib/stats/clustered/proportion-sum';

/** log(n!!) of an odd n of at least -1, or of an even one of at least 0. */
const logDoubleFactorial = (n: number): number => (n < 2 ? 0 : Math.log(n) + logDoubleFactorial(n - 2));

/**
 * The mean of p^events (1 - p)^others over asin(sqrt(p)) from 0 to pi/2 is that of sin^(2 events) cos^(2 others):
 * (2 events - 1)!! (2 others - 1)!! / (2 (events + others))!!, Abramowitz & Stegun (1964), 6.2.1 (citation from memory).
 */
const exact = (events: number, others: number) =>
  logDoubleFactorial(2 * events - 1) +
  logDoubleFactorial(2 * others - 1) -
  logDoubleFactorial(2 * (events + others));

const logLikelihood = (events: number, others: number) => (p: number) =>
  events * Math.log(p) + others * Math.log1p(-p);

const counts = [
  [0, 0],
  [0, 3],
  [4, 0],
  [1, 1],
  [7, 5],
  [0, 900],
  [2, 3000],
  [1500, 1500],
] as const;

describe('proportionSum', () => {
  it('is the mean of the likelihood to eight digits with twelve steps in its hump, and near it with five', () => {
    for (const [events, others] of counts) {
      const sum = (fewest: number) => proportionSum(logLikelihood(events, others), undefined, fewest).logMean;
      expect(sum(12)).toBeCloseTo(exact(events, others), 7);
      expect(Math.abs(sum(5) - exact(events, others))).toBeLessThan(0.2);
    }
  });

  it('does not depend on where it begins', () => {
    for (const [events, others] of counts)
      for (const from of [
        { cells: 16, peak: 0 },
        { cells: 16, peak: 15 },
        { cells: 1024, peak: 1000 },
      ]) {
        const { logMean } = proportionSum(logLikelihood(events, others), from, 12);
        expect(logMean).toBeCloseTo(exact(events, others), 7);
      }
  });

  it('begins a like one where this one was, at most a few evaluations more than the hump holds', () => {
    const { next } = proportionSum(logLikelihood(30, 270), undefined, 12);
    let asked = 0;
    const again = proportionSum(
      (p) => {
        asked += 1;
        return logLikelihood(30, 270)(p);
      },
      next,
      12,
    );
    expect(again.logMean).toBeCloseTo(exact(30, 270), 7);
    expect(asked).toBeLessThan(40);
  });
});
