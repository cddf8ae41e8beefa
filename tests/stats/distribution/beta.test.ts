import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  betaCdf,
  betaQuantile,
  betaSurvival,
  betaUpperQuantile,
  logBeta,
  logBetaSurvival,
} from '@/lib/stats/distribution/beta';
import { logBinomialCdf } from '@/lib/stats/distribution/binomial';
import { fQuantile, fSurvival } from '@/lib/stats/distribution/f';
import { tCdf, tQuantile, tSurvival } from '@/lib/stats/distribution/student-t';
import { expectClose } from './expect-close';

const shape = fc.double({ min: 0.05, max: 2000, noNaN: true });
const probability = fc.double({ min: 1e-12, max: 1, maxExcluded: true, noNaN: true });

describe('the beta distribution', () => {
  it('agrees with 60-digit arithmetic in a log tail where R 4.2.2 is wrong in the 10th digit', () => {
    expectClose(logBetaSurvival(0.1, 10, 100_000), -10465.959069682065, 1e-14);
  });

  it('is a power of x when b is 1', () => {
    fc.assert(
      fc.property(shape, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (a, x) => {
        if (a * Math.log(x) > -690) expectClose(betaCdf(x, a, 1), x ** a, 1e-10);
      }),
    );
  });

  it('is mirrored by swapping its shapes', () => {
    fc.assert(
      fc.property(shape, shape, fc.integer({ min: 1, max: 255 }), (a, b, sixteenths) => {
        const x = sixteenths / 256;
        expectClose(betaSurvival(1 - x, b, a), betaCdf(x, a, b), 1e-11);
      }),
    );
  });

  it('takes quantiles back to the probability they came from, in both tails', () => {
    fc.assert(
      fc.property(shape, shape, probability, (a, b, p) => {
        const low = betaQuantile(p, a, b);
        if (low > 1e-290 && low < 0.999999) expectClose(betaCdf(low, a, b), p, 1e-6);
        const high = betaUpperQuantile(p, a, b);
        if (high > 1e-290 && high < 0.999999) expectClose(betaSurvival(high, a, b), p, 1e-6);
      }),
    );
  });

  it('has log B(a, b) without cancellation for large arguments', () => {
    expectClose(logBeta(1, 1e9), -Math.log(1e9), 1e-13);
    expect(logBeta(1, 1)).toBeCloseTo(0, 15);
  });

  it('refuses shapes and probabilities out of range by name', () => {
    expect(() => betaCdf(0.5, -1, 1)).toThrow(/^a:/);
    expect(() => betaQuantile(2, 1, 1)).toThrow(/^p:/);
  });
});

describe("Student's t and F", () => {
  it('has the Cauchy distribution at 1 degree of freedom', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1e8, noNaN: true }), (t) => {
        expectClose(tSurvival(t, 1), Math.atan2(1, t) / Math.PI, 1e-12);
      }),
    );
  });

  it('gives textbook points', () => {
    expect(tQuantile(0.975, 1)).toBeCloseTo(12.7062047, 7);
    expect(tQuantile(0.975, 10)).toBeCloseTo(2.2281389, 7);
    expect(fQuantile(0.95, 2, 10)).toBeCloseTo(4.102821, 6);
  });

  it('is the normal at infinitely many degrees of freedom', () => {
    expect(tQuantile(0.975, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959963985, 9);
  });

  it('has F(1, df) as the square of t(df)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 30, noNaN: true }),
        fc.double({ min: 0.5, max: 1e5, noNaN: true }),
        (t, df) => expectClose(fSurvival(t * t, 1, df), 2 * tSurvival(t, df), 1e-10),
      ),
    );
  });

  it('takes quantiles of t back to the probability they came from', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1e6, noNaN: true }), probability, (df, p) => {
        const t = tQuantile(p, df);
        if (Number.isFinite(t)) expectClose(tCdf(t, df), p, 1e-10);
      }),
    );
  });
});

describe('log tails of the binomial', () => {
  it('agrees with 40-digit arithmetic beyond the smallest double', () => {
    expectClose(logBinomialCdf(100, 5000, 0.3), -1381.0724407806065, 1e-13);
  });
});
