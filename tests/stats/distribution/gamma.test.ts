import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile, chiSquareSurvival } from '@/lib/stats/distribution/chi-square';
import {
  digamma,
  gammaCdf,
  gammaQuantile,
  gammaSurvival,
  gammaUpperQuantile,
  logGamma,
  trigamma,
} from '@/lib/stats/distribution/gamma';
import { ArgumentError } from '@/lib/stats/outcome';
import { expectClose } from './expect-close';

const shapes = fc.double({ min: 0.01, max: 3000, noNaN: true });

describe('the gamma function and its logarithmic derivatives', () => {
  it('agrees with 40-digit arithmetic beside the zeros of log gamma', () => {
    expectClose(logGamma(1.0001), -5.771334222047127e-5, 1e-11);
    expectClose(logGamma(2.0001), 4.2281658112919945e-5, 1e-11);
  });

  it('satisfies the recurrences of log gamma, digamma and trigamma', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (x) => {
        expect(logGamma(x + 1) - logGamma(x) - Math.log(x)).toBeCloseTo(0, 9);
        expect(digamma(x + 1) - digamma(x) - 1 / x).toBeCloseTo(0, 9);
        expect((trigamma(x + 1) - trigamma(x)) * x * x + 1).toBeCloseTo(0, 6);
      }),
    );
  });

  it('has the known values at 1: -Euler for digamma, pi^2/6 for trigamma', () => {
    expectClose(digamma(1), -0.5772156649015329, 1e-15);
    expectClose(trigamma(1), Math.PI ** 2 / 6, 1e-15);
  });

  it('refuses arguments that are not above 0', () => {
    for (const f of [logGamma, digamma, trigamma]) expect(() => f(0)).toThrow(ArgumentError);
  });
});

describe('the gamma and chi-square distributions', () => {
  it('agrees with 40-digit arithmetic where the upper tail is nearly 0 for its small shape', () => {
    expectClose(gammaSurvival(0.5, 0.001), 0.0005600666564707498, 1e-12);
    expectClose(gammaCdf(1500, 2000), 6.601488115620482e-35, 1e-11);
  });

  it('has the exponential distribution at shape 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 700, noNaN: true }), (x) => {
        expectClose(gammaSurvival(x, 1), Math.exp(-x), 1e-12);
        expectClose(gammaCdf(x, 1), -Math.expm1(-x), 1e-12);
      }),
    );
  });

  it('takes quantiles back to the probability they came from, in both tails', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 1e-15, max: 0.999, noNaN: true }), (shape, p) => {
        const x = gammaQuantile(p, shape);
        if (x > 1e-290) expectClose(gammaCdf(x, shape), p, 1e-10);
        expectClose(gammaSurvival(gammaUpperQuantile(p, shape), shape), p, 1e-10);
      }),
    );
  });

  it('gives the textbook 5 % points of chi-square', () => {
    expect(chiSquareQuantile(0.95, 1)).toBeCloseTo(3.841459, 6);
    expect(chiSquareQuantile(0.95, 10)).toBeCloseTo(18.307038, 6);
    expectClose(chiSquareSurvival(2 * Math.LN2, 2), 0.5, 1e-14);
  });

  it('answers 0 and 1 outside the support and refuses bad shapes by name', () => {
    expect(gammaCdf(-1, 2)).toBe(0);
    expect(gammaSurvival(Number.POSITIVE_INFINITY, 2)).toBe(0);
    expect(gammaQuantile(0, 2)).toBe(0);
    expect(gammaQuantile(1, 2)).toBe(Number.POSITIVE_INFINITY);
    expect(() => gammaCdf(1, 0)).toThrow(/^shape:/);
    expect(() => chiSquareSurvival(1, Number.NaN)).toThrow(/^df:/);
  });
});
