import { expect, test } from 'vitest';
import { likelihoodRatioTest } from '../../../../lib/stats/mixed/likelihood-ratio';
import { fitLinearMixed } from '../../../../lib/stats/mixed/linear/fit-linear';
import { predictLinear } from '../../../../lib/stats/mixed/linear/predict-linear';
import { profileCoefficient } from '../../../../lib/stats/mixed/linear/profile-coefficient';
import { profileDeviations } from '../../../../lib/stats/mixed/linear/profile-deviations';
import { estimated } from '../../../reference/mixed/mixed-case';
import { simulatedBatches, termsOf } from '../simulated-batches';

const batches = simulatedBatches(31, 80);
const input = { response: batches.map(({ be }) => be), ...termsOf(batches) };
const own = estimated(fitLinearMixed(input));
const row = { method: 'B', moisture: 60, site: 'S1', lot: 'L2' };

test('the prediction of a row of the data is its fitted value', () => {
  const index = batches.findIndex(({ site }) => site === 'S3');
  const batch = batches[index];
  const [answer] = predictLinear(own, batch ? [{ ...batch }] : []).map(estimated);
  expect(answer?.group.estimate).toBeCloseTo(own.fitted[index] ?? Number.NaN, 8);
});

test('an unknown site takes the population value and the whole variance between sites', () => {
  const [known, unknown] = predictLinear(own, [row, { ...row, site: 'new' }]).map(estimated);
  const variance = own.varianceComponents[0]?.variance ?? 0;
  expect(unknown?.population.estimate).toBe(known?.population.estimate);
  expect((unknown?.group.standardError ?? 0) ** 2).toBeGreaterThan(variance);
  expect(unknown?.group.standardError).toBeGreaterThan(known?.group.standardError ?? 0);
  expect(unknown?.observation.standardError).toBeGreaterThan(unknown?.group.standardError ?? 0);
});

test('a level that the fixed part does not know is refused by name', () => {
  expect(() => predictLinear(own, [{ ...row, method: 'Z' }])).toThrow('row.method');
});

test('profile intervals hold their estimates', () => {
  const ml = estimated(fitLinearMixed({ ...input, method: 'ML' }));
  const estimates = [
    ...ml.varianceComponents.map((part) => part.standardDeviation),
    ml.residualStandardDeviation,
  ];
  profileDeviations(ml).forEach(({ interval }, index) => {
    expect(interval.low).toBeLessThan(estimates[index] ?? Number.NaN);
    expect(interval.high).toBeGreaterThan(estimates[index] ?? Number.NaN);
  });
  const slope = estimated(profileCoefficient(ml, 'moisture'));
  const estimate = Number(ml.coefficients.find(({ name }) => name === 'moisture')?.estimate);
  expect(slope.low).toBeLessThan(estimate);
  expect(slope.high).toBeGreaterThan(estimate);
});

test('the likelihood-ratio test refuses restricted likelihoods of different fixed parts', () => {
  const smaller = estimated(fitLinearMixed({ ...input, fixed: input.fixed.slice(0, 1) }));
  expect(likelihoodRatioTest(smaller, own)).toMatchObject({
    kind: 'cannot-compute',
    reason: 'not-identifiable',
  });
  expect(() => likelihoodRatioTest(own, smaller)).toThrow('smaller');
});

test('a single variance is tested on its boundary', () => {
  const smaller = estimated(fitLinearMixed({ ...input, random: input.random.slice(0, 1) }));
  const test = estimated(likelihoodRatioTest(smaller, own, true));
  expect(test.degreesOfFreedom).toBe(1);
  expect(test.boundaryPValue).toBe(test.pValue / 2);
});
