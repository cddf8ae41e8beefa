import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitLinearMixed } from '../../../../lib/stats/mixed/linear/fit-linear';
import type { LinearMixedInput } from '../../../../lib/stats/mixed/linear/linear-input';
import { seededRandom } from '../../../../lib/stats/random/seeded-random';
import { estimated } from '../../../reference/mixed/mixed-case';
import { dataSet } from '../reference-data';
import { estimatesOf, type SimulatedBatch, simulatedBatches, termsOf } from '../simulated-batches';

const fitOf = (input: LinearMixedInput) => estimated(fitLinearMixed(input));
const ofBatches = (batches: readonly SimulatedBatch[]): LinearMixedInput => ({
  response: batches.map(({ be }) => be),
  ...termsOf(batches),
});
const samples = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  count: fc.integer({ min: 25, max: 80 }),
});
const deviations = (input: LinearMixedInput) => {
  const own = fitOf(input);
  return [...own.varianceComponents.map((part) => part.standardDeviation), own.residualStandardDeviation];
};
const close = (a: readonly number[], b: readonly number[], digits = 5) => {
  expect(a).toHaveLength(b.length);
  a.forEach((value, i) => {
    expect(value).toBeCloseTo(b[i] ?? Number.NaN, digits);
  });
};

// Bates, Maechler, Bolker & Walker (2015) J Stat Softw 67(1) and the lme4 help pages, values from memory.
test('the yield of dyestuff gives the published standard deviations 42.00 and 49.51', () => {
  const data = dataSet('07_lmm', 'dyestuff');
  const own = fitOf({
    response: data.number('Yield'),
    fixed: [],
    random: [{ name: 'Batch', values: data.text('Batch') }],
  });
  expect(own.varianceComponents[0]?.standardDeviation).toBeCloseTo(42.0, 2);
  expect(own.residualStandardDeviation).toBeCloseTo(49.51, 2);
  expect(estimatesOf(own)[0]).toBeCloseTo(1527.5, 6);
});

test('crossed plates and samples of penicillin give the published 0.847, 1.932 and 0.550', () => {
  const data = dataSet('07_lmm', 'penicillin_crossed');
  const own = fitOf({
    response: data.number('diameter'),
    fixed: [],
    random: [
      { name: 'plate', values: data.text('plate') },
      { name: 'sample', values: data.text('sample') },
    ],
  });
  close(
    [...own.varianceComponents.map((part) => part.standardDeviation), own.residualStandardDeviation],
    [0.8467, 1.9316, 0.5499],
    3,
  );
  expect(own.minusTwoLogLikelihood).toBeCloseTo(330.86, 2);
});

test('the order of the rows changes nothing', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const shuffled = seededRandom(seed + 1).shuffle(batches);
      close(estimatesOf(fitOf(ofBatches(shuffled))), estimatesOf(fitOf(ofBatches(batches))));
      close(deviations(ofBatches(shuffled)), deviations(ofBatches(batches)), 4);
    }),
    { numRuns: 25 },
  );
});

test('renaming the groups changes nothing but the names', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const renamed = {
        response: batches.map(({ be }) => be),
        ...termsOf(batches, (label) => `${9 - Number(label.slice(1))} farm`),
      };
      close(deviations(renamed), deviations(ofBatches(batches)), 4);
    }),
    { numRuns: 25 },
  );
});

test('a response in other units gives estimates in those units', () => {
  fc.assert(
    fc.property(samples, fc.constantFrom(1e-6, 1e-3, 1e3, 1e9), ({ seed, count }, factor) => {
      const input = ofBatches(simulatedBatches(seed, count));
      const scaled = { ...input, response: Array.from(input.response, (value) => value * factor) };
      close(
        estimatesOf(fitOf(scaled)).map((value) => value / factor),
        estimatesOf(fitOf(input)),
      );
      close(
        deviations(scaled).map((value) => value / factor),
        deviations(input),
        4,
      );
    }),
    { numRuns: 25 },
  );
});

test('a covariate far from 0 is as good as one near it', () => {
  const input = ofBatches(simulatedBatches(5, 60));
  const shifted = {
    ...input,
    fixed: input.fixed.map((term) =>
      term.kind === 'covariate' ? { ...term, values: Array.from(term.values, (value) => value + 1e6) } : term,
    ),
  };
  expect(estimatesOf(fitOf(shifted)).at(-1)).toBeCloseTo(estimatesOf(fitOf(input)).at(-1) ?? Number.NaN, 6);
});

test('weights of 2 throughout double the variance of a row of weight 1 and change nothing else', () => {
  const batches = simulatedBatches(7, 40);
  const weighted = fitOf({ ...ofBatches(batches), weights: batches.map(() => 2) });
  const plain = fitOf(ofBatches(batches));
  close(estimatesOf(weighted), estimatesOf(plain));
  expect(weighted.residualStandardDeviation).toBeCloseTo(plain.residualStandardDeviation * Math.SQRT2, 5);
});

test('an offset is taken out of the response and put back into fitted values', () => {
  const batches = simulatedBatches(8, 40);
  const input = ofBatches(batches);
  const offset = batches.map((_, row) => row);
  const plain = fitOf(input);
  const moved = fitOf({ ...input, response: batches.map(({ be }, row) => be + row), offset });
  close(estimatesOf(moved), estimatesOf(plain));
  expect(moved.fitted[10]).toBeCloseTo((plain.fitted[10] ?? 0) + 10, 6);
});

test('without random terms it is least squares', () => {
  const own = fitOf({
    response: [1, 2, 4, 7],
    fixed: [{ kind: 'covariate', name: 'x', values: [0, 1, 2, 3] }],
    random: [],
  });
  close(estimatesOf(own), [0.5, 2], 10);
  expect(own.residualStandardDeviation).toBeCloseTo(Math.sqrt(1 / 2), 10);
});

test('columns that say the same are answered by a reason, the others by numbers', () => {
  const batches = simulatedBatches(9, 50);
  const input = ofBatches(batches);
  const copy = { kind: 'factor' as const, name: 'copy', values: batches.map(({ method }) => method) };
  const own = fitOf({ ...input, fixed: [...input.fixed, copy] });
  const reasons = own.coefficients
    .filter(({ estimate }) => typeof estimate !== 'number')
    .map(({ name }) => name);
  expect(reasons).toEqual(['methodB', 'methodC', 'copyB', 'copyC']);
  expect(own.coefficients.find(({ name }) => name === 'moisture')?.estimate).toBeTypeOf('number');
});

test('thin data are answered by a reason', () => {
  const site = { name: 'site', values: ['a', 'a', 'a'] };
  expect(fitLinearMixed({ response: [1, 2, 3], fixed: [], random: [site] })).toMatchObject({
    reason: 'too-few-clusters',
  });
  expect(fitLinearMixed({ response: [], fixed: [], random: [] })).toMatchObject({ reason: 'no-data' });
  expect(fitLinearMixed({ response: [4], fixed: [], random: [] })).toMatchObject({
    reason: 'too-few-observations',
  });
  expect(fitLinearMixed({ response: [4, 4, 4], fixed: [], random: [] })).toMatchObject({
    reason: 'no-variation',
  });
  expect(
    fitLinearMixed({ response: [1, 2, 3], fixed: [], random: [{ name: 'row', values: ['a', 'b', 'c'] }] }),
  ).toMatchObject({ reason: 'not-identifiable' });
});

test('bad arguments are refused by name', () => {
  const site = { name: 'site', values: ['a', 'b', 'b'] };
  const of = (over: Partial<LinearMixedInput>) => () =>
    fitLinearMixed({ response: [1, 2, 3], fixed: [], random: [site], ...over });
  expect(of({ response: [1, Number.NaN, 3] })).toThrow('response[1]');
  expect(of({ weights: [1, 0, 1] })).toThrow('weights[1]');
  expect(of({ weights: [1] })).toThrow('weights');
  expect(of({ random: [{ name: 'site', values: ['a', 'b'] }] })).toThrow('random.site.values');
  expect(of({ random: [{ name: 'site', values: ['a', '', 'b'] }] })).toThrow('random.site.values');
  expect(of({ random: [site, site] })).toThrow('random.site');
  expect(of({ random: [{ ...site, levels: ['a', 'a', 'b'] }] })).toThrow('twice');
  expect(of({ fixed: [{ kind: 'interaction', of: ['method', 'site'] }] })).toThrow('fixed.interaction');
});
