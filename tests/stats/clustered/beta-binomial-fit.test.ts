import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BetaBinomialFit, betaBinomialFit } from '@/lib/stats/clustered/beta-binomial-fit';
import type { ClusteredRows } from '@/lib/stats/clustered/cluster-counts';
import { logGamma } from '@/lib/stats/distribution/gamma';
import { clusterRows, columns, rearranged, weilControl, weilTreated } from './clustered-rows';

function fitOf(rows: Parameters<typeof betaBinomialFit>[0]): BetaBinomialFit {
  const answer = betaBinomialFit(rows);
  if (answer.kind !== 'estimate') throw new Error(`no fit: ${answer.explanation}`);
  return answer;
}

/** The density written with gamma functions, a = mu (1 - rho) / rho and b = (1 - mu) (1 - rho) / rho. */
function logLikelihood({ events, trials }: ClusteredRows, mu: number, rho: number): number {
  const [a, b] = [(mu * (1 - rho)) / rho, ((1 - mu) * (1 - rho)) / rho];
  const logBeta = (p: number, q: number) => logGamma(p) + logGamma(q) - logGamma(p + q);
  return events.reduce((sum, x, row) => {
    const n = trials[row] ?? Number.NaN;
    const ways = logGamma(n + 1) - logGamma(x + 1) - logGamma(n - x + 1);
    return sum + ways + logBeta(a + x, b + n - x) - logBeta(a, b);
  }, 0);
}

describe('betaBinomialFit', () => {
  it('has the log-likelihood of the beta-binomial density, and no point near it has a higher one', () => {
    for (const rows of [weilControl, weilTreated]) {
      const fit = fitOf(rows);
      const mu = 1 / (1 + Math.exp(-(fit.coefficients[0] ?? 0)));
      expect(fit.logLikelihood).toBeCloseTo(logLikelihood(rows, mu, fit.rho), 9);
      for (const [shift, factor] of [
        [0.01, 1],
        [-0.01, 1],
        [0, 1.1],
        [0, 0.9],
      ] as const) {
        expect(logLikelihood(rows, mu + shift, fit.rho * factor)).toBeLessThan(fit.logLikelihood);
      }
    }
  });

  it('never fits worse than the binomial, and is the binomial at the boundary', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const fit = betaBinomialFit(columns(rows));
        if (fit.kind !== 'estimate') return;
        expect(fit.logLikelihood).toBeGreaterThanOrEqual(fit.binomialLogLikelihood - 1e-9);
        expect(fit.rho).toBeGreaterThanOrEqual(0);
        expect(fit.rho).toBeLessThanOrEqual(1);
        expect(fit.pValue).toBeGreaterThanOrEqual(0);
        if (!fit.boundary) return;
        expect(fit).toMatchObject({ rho: 0, likelihoodRatio: 0, pValue: 1 });
        const events = rows.reduce((sum, row) => sum + row.events, 0);
        const trials = rows.reduce((sum, row) => sum + row.trials, 0);
        expect(fit.coefficients[0]).toBeCloseTo(Math.log(events / (trials - events)), 8);
      }),
    );
  });

  it('does not depend on the order of rows, on their being split, or on the names of clusters', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const [one, other] = [betaBinomialFit(columns(rows)), betaBinomialFit(columns(rearranged(rows)))];
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 7);
        expect(other.rho).toBeCloseTo(one.rho, 4);
      }),
    );
  });

  it('gives the difference of two groups the same whichever of them is the base', () => {
    const both = {
      events: [...weilControl.events, ...weilTreated.events],
      trials: [...weilControl.trials, ...weilTreated.trials],
    };
    const treated = both.events.map((_, row) => (row < 16 ? 0 : 1));
    const one = fitOf({ ...both, design: treated.map((value) => [1, value]) });
    const other = fitOf({ ...both, design: treated.map((value) => [1, 1 - value]) });
    expect(other.coefficients[1]).toBeCloseTo(-(one.coefficients[1] ?? 0), 8);
    expect(other.standardErrors[1]).toBeCloseTo(one.standardErrors[1] ?? 0, 8);
    expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 9);
  });

  it('answers what the data cannot show by its reason', () => {
    expect(betaBinomialFit({ events: [], trials: [] })).toMatchObject({ reason: 'no-data' });
    expect(betaBinomialFit({ events: [3], trials: [10] })).toMatchObject({ reason: 'too-few-clusters' });
    expect(betaBinomialFit({ events: [1, 0], trials: [1, 1] })).toMatchObject({ reason: 'not-identifiable' });
    expect(betaBinomialFit({ events: [0, 0], trials: [5, 6] })).toMatchObject({ reason: 'separation' });
    const twice = {
      events: [1, 2, 3],
      trials: [9, 9, 9],
      design: [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    };
    expect(betaBinomialFit(twice)).toMatchObject({ reason: 'not-identifiable' });
    const apart = {
      events: [0, 0, 3, 4],
      trials: [9, 9, 9, 9],
      design: [
        [1, 0],
        [1, 0],
        [1, 1],
        [1, 1],
      ],
    };
    expect(betaBinomialFit(apart)).toMatchObject({ reason: 'separation' });
  });

  it('has a correlation of 1 with a reason for its spread where every cluster is all or nothing', () => {
    const fit = fitOf({ events: [0, 10, 0, 8, 0, 12], trials: [10, 10, 9, 8, 7, 12] });
    expect(fit.rho).toBe(1);
    expect(fit.logitRho).toMatchObject({ reason: 'separation' });
    expect(fit.coefficients[0]).toBeCloseTo(0, 12);
    expect(fit.logLikelihood).toBeCloseTo(6 * Math.log(0.5), 12);
  });

  it('names the argument that cannot be', () => {
    const rows = { events: [1, 2], trials: [9, 9] };
    expect(() => betaBinomialFit({ events: [1e8, 2e8], trials: [1e9, 1e9] })).toThrow(/^trials/);
    expect(() => betaBinomialFit({ ...rows, design: [[1]] })).toThrow(/^design/);
    expect(() => betaBinomialFit({ ...rows, design: [[1], [1, 2]] })).toThrow(/^design\[1\]/);
    expect(() => betaBinomialFit({ ...rows, design: [[1], [Number.NaN]] })).toThrow(/^design\[1\]\[0\]/);
    expect(() => betaBinomialFit({ ...rows, cluster: ['a', 'a'], design: [[1], [2]] })).toThrow(
      /^design\[1\]/,
    );
  });
});
