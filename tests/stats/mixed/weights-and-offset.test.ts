import { expect, test } from 'vitest';
import { fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import { fitLinearMixed } from '../../../lib/stats/mixed/linear/fit-linear';
import { estimated } from '../../reference/mixed/mixed-case';

const fixed = [{ kind: 'covariate' as const, name: 'x', values: [1, 2, 3, 1, 2, 3, 1, 2, 3, 2] }];
const random = [{ name: 'g', values: ['a', 'a', 'a', 'b', 'b', 'b', 'c', 'c', 'c', 'a'] }];
const offset = [0, 1, 0, 1, 0, 1, 0, 1, 0, 1];

// Made data; expected values of lmer and glmer (lme4 1.1.31, R 4.2.2, tight tolerances).
test('prior weights and an offset give what lme4 gives', () => {
  const own = estimated(
    fitLinearMixed({
      response: [12, 15, 11, 19, 22, 18, 30, 25, 28, 9],
      fixed,
      random,
      weights: [1, 2, 0.5, 3, 1, 1, 2, 2, 1, 4],
      offset,
    }),
  );
  expect(own.minusTwoLogLikelihood).toBeCloseTo(52.502816101595, 8);
  expect(own.residualStandardDeviation).toBeCloseTo(4.059005976, 5);
  expect(own.theta[0]).toBeCloseTo(2.0272506, 5);
  expect(Number(own.coefficients[0]?.estimate)).toBeCloseTo(20.139849431, 5);
  expect(Number(own.coefficients[1]?.standardError)).toBeCloseTo(1.484137727, 5);
});

test('an offset on the logit gives what lme4 gives', () => {
  const own = estimated(
    fitBinomialMixed({
      events: [1, 2, 0, 5, 4, 3, 6, 5, 7, 1],
      trials: [10, 12, 9, 14, 10, 8, 11, 10, 12, 9],
      fixed,
      random,
      offset,
    }),
  );
  expect(own.minusTwoLogLikelihood).toBeCloseTo(38.55209413837, 5);
  expect(Number(own.coefficients[0]?.estimate)).toBeCloseTo(-1.4061995, 3);
  expect(own.theta[0]).toBeCloseTo(1.0356936, 3);
});
