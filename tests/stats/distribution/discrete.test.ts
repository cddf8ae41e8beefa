import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  binomialCdf,
  binomialDensity,
  binomialQuantile,
  binomialSurvival,
  logBinomialCoefficient,
} from '@/lib/stats/distribution/binomial';
import {
  hypergeometricCdf,
  hypergeometricDensity,
  hypergeometricSurvival,
} from '@/lib/stats/distribution/hypergeometric';
import {
  poissonCdf,
  poissonDensity,
  poissonQuantile,
  poissonSurvival,
} from '@/lib/stats/distribution/poisson';
import { poissonBinomialDensities } from '@/lib/stats/distribution/poisson-binomial';
import { expectClose } from './expect-close';

const smallCount = fc.integer({ min: 0, max: 60 });
const probability = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe('binomial, Poisson and hypergeometric', () => {
  it('adds binomial densities up to the distribution function', () => {
    fc.assert(
      fc.property(smallCount, smallCount, probability, (k, n, p) => {
        let sum = 0;
        for (let i = 0; i <= Math.min(k, n); i += 1) sum += binomialDensity(i, n, p);
        expectClose(binomialCdf(k, n, p), sum, 1e-11);
        expect(binomialCdf(k, n, p) + binomialSurvival(k, n, p)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('answers the smallest count that reaches the probability', () => {
    fc.assert(
      fc.property(smallCount, probability, probability, (n, prob, p) => {
        const k = binomialQuantile(p, n, prob);
        expect(binomialCdf(k, n, prob)).toBeGreaterThanOrEqual(p * (1 - 1e-12));
        if (k > 0) expect(binomialCdf(k - 1, n, prob)).toBeLessThan(p * (1 + 1e-12));
      }),
    );
  });

  it('adds Poisson densities up, and its quantile reaches the probability', () => {
    fc.assert(
      fc.property(smallCount, fc.double({ min: 0.01, max: 80, noNaN: true }), probability, (k, mean, p) => {
        let sum = 0;
        for (let i = 0; i <= k; i += 1) sum += poissonDensity(i, mean);
        expectClose(poissonCdf(k, mean), sum, 1e-10);
        const reached = poissonQuantile(p, mean);
        expect(poissonCdf(reached, mean)).toBeGreaterThanOrEqual(p * (1 - 1e-12));
        expect(poissonSurvival(reached - 1, mean)).toBeGreaterThan((1 - p) * (1 - 1e-9));
      }),
    );
  });

  it('draws without replacement as often as counting gives', () => {
    // Lady tasting tea: 4 of 4 right is 1 of 70 (Fisher 1935, The Design of Experiments, ch. 2).
    expectClose(hypergeometricDensity(4, 4, 4, 4), 1 / 70, 1e-13);
    expectClose(hypergeometricSurvival(2, 4, 4, 4), 17 / 70, 1e-13);
    expectClose(hypergeometricSurvival(19, 50, 450, 100), 0.00046944985456500013, 1e-12);
  });

  it('has the same hypergeometric tails when successes and draws change places', () => {
    fc.assert(
      fc.property(smallCount, smallCount, smallCount, smallCount, (k, successes, failures, draws) => {
        const units = successes + failures;
        if (draws > units) return;
        const one = hypergeometricCdf(k, successes, failures, draws);
        expect(hypergeometricCdf(k, draws, units - draws, successes)).toBeCloseTo(one, 12);
      }),
    );
  });

  it('has the binomial as the Poisson-binomial of equal probabilities, whatever their order', () => {
    fc.assert(
      fc.property(fc.array(probability, { minLength: 1, maxLength: 30 }), (probabilities) => {
        const forward = poissonBinomialDensities(probabilities);
        const backward = poissonBinomialDensities(probabilities.toReversed());
        forward.forEach((density, k) => {
          expect(backward[k]).toBeCloseTo(density, 13);
        });
        const [p = 0.5] = probabilities;
        poissonBinomialDensities(probabilities.map(() => p)).forEach((density, k) => {
          expectClose(density, binomialDensity(k, probabilities.length, p), 1e-10);
        });
      }),
    );
  });

  it('counts the ways to choose, and none beyond n', () => {
    expectClose(Math.exp(logBinomialCoefficient(30, 3)), 4060, 1e-12);
    expect(logBinomialCoefficient(5, 5)).toBe(0);
    expect(logBinomialCoefficient(5, 17)).toBe(Number.NEGATIVE_INFINITY);
  });

  it('refuses what no data can have, by name', () => {
    expect(() => binomialCdf(1, -1, 0.5)).toThrow(/^n:/);
    expect(() => binomialCdf(1, 2, 1.5)).toThrow(/^p:/);
    expect(() => poissonCdf(1, -2)).toThrow(/^mean:/);
    expect(() => hypergeometricCdf(1, 2, 3, 6)).toThrow(/^draws:/);
    expect(() => poissonBinomialDensities([0.1, Number.NaN])).toThrow(/^probabilities\[1\]:/);
  });
});
