import { expect, test } from 'vitest';
import { binomialSurvival } from '../../../../lib/stats/distribution/binomial';
import { predictCount } from '../../../../lib/stats/mixed/binomial/predict-count';
import { clusteredTail } from '../../../../lib/stats/watching/clustered-tail';

const given = {
  units: 20,
  logit: -2,
  standardDeviation: 0,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
  level: 0.95,
};

test('without any spread it is the binomial distribution', () => {
  const share = 1 / (1 + Math.exp(2));
  const { expected, low, high } = predictCount(given);
  expect(expected).toBeCloseTo(20 * share, 10);
  expect(low).toBe(0);
  expect(binomialSurvival(high, 20, share)).toBeLessThanOrEqual(0.025);
  expect(binomialSurvival(high - 1, 20, share)).toBeGreaterThan(0.025);
});

test.each([0.3, 0.8, 1.5])(
  'each tail outside holds one in forty at most where log odds vary by %s',
  (standardDeviation) => {
    const wide = { ...given, units: 60, logit: -1, standardDeviation };
    const { low, high } = predictCount(wide);
    const above = (count: number) => clusteredTail(count, 60, -1, standardDeviation);
    expect(above(high + 1)).toBeLessThanOrEqual(0.026);
    expect(above(high)).toBeGreaterThan(0.024);
    expect(1 - above(low)).toBeLessThanOrEqual(0.026);
    expect(1 - above(low + 1)).toBeGreaterThan(0.024);
  },
);

test('few degrees of freedom widen it', () => {
  const wide = { ...given, units: 100, standardDeviation: 0.6 };
  expect(predictCount({ ...wide, degreesOfFreedom: 3 }).high).toBeGreaterThan(predictCount(wide).high);
});

test('log odds far out neither overflow nor lose the count', () => {
  expect(predictCount({ ...given, logit: 900 })).toEqual({ expected: 20, low: 20, high: 20 });
  expect(predictCount({ ...given, logit: -900 })).toEqual({ expected: 0, low: 0, high: 0 });
});
