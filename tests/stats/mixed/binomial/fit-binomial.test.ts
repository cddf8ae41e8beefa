import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BinomialMixedInput } from '../../../../lib/stats/mixed/binomial/binomial-input';
import { fitBinomialMixed } from '../../../../lib/stats/mixed/binomial/fit-binomial';
import { profileBinomialDeviations } from '../../../../lib/stats/mixed/binomial/profile-binomial';
import { seededRandom } from '../../../../lib/stats/random/seeded-random';
import { estimated } from '../../../reference/mixed/mixed-case';
import { dataSet } from '../reference-data';
import { estimatesOf, type SimulatedBatch, simulatedBatches, termsOf } from '../simulated-batches';

const fitOf = (input: BinomialMixedInput) => estimated(fitBinomialMixed(input));
const ofBatches = (batches: readonly SimulatedBatch[]): BinomialMixedInput => ({
  events: batches.map(({ contaminated }) => contaminated),
  trials: batches.map(({ units }) => units),
  ...termsOf(batches),
});
const samples = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  count: fc.integer({ min: 30, max: 80 }),
});
const close = (a: readonly number[], b: readonly number[], digits = 4) => {
  expect(a).toHaveLength(b.length);
  a.forEach((value, i) => {
    expect(value).toBeCloseTo(b[i] ?? Number.NaN, digits);
  });
};

function cbpp(over: Partial<BinomialMixedInput> = {}): BinomialMixedInput {
  const data = dataSet('08_glmm_binomial', 'cbpp');
  return {
    events: data.number('incidence'),
    trials: data.number('size'),
    fixed: [{ kind: 'factor', name: 'period', values: data.text('period') }],
    random: [{ name: 'herd', values: data.text('herd') }],
    ...over,
  };
}

// lme4's help page of glmer (Lesnoff et al. 2004's data), values from memory.
test('contagious pleuropneumonia by period gives the published -1.398, -0.992, -1.128, -1.580 and 0.642', () => {
  const own = fitOf(cbpp());
  close(estimatesOf(own), [-1.398, -0.992, -1.128, -1.58], 2);
  expect(own.varianceComponents[0]?.standardDeviation).toBeCloseTo(0.642, 3);
});

test('the profile of its herd standard deviation is the published 0.346 to 1.100', () => {
  const [herd] = profileBinomialDeviations(fitOf(cbpp()));
  expect(herd?.interval.low).toBeCloseTo(0.346, 3);
  expect(herd?.interval.high).toBeCloseTo(1.1, 3);
});

test('quadrature settles as points are added, and lies near the Laplace approximation', () => {
  const values = [1, 9, 25, 61].map(
    (quadraturePoints) => fitOf(cbpp({ quadraturePoints })).minusTwoLogLikelihood,
  );
  expect(values[1]).toBeCloseTo(values[3] ?? 0, 4);
  expect(values[2]).toBeCloseTo(values[3] ?? 0, 8);
  expect(Math.abs((values[0] ?? 0) - (values[3] ?? 0))).toBeLessThan(0.2);
});

test('the order of the rows changes nothing', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const shuffled = seededRandom(seed + 1).shuffle(batches);
      const [one, other] = [fitOf(ofBatches(batches)), fitOf(ofBatches(shuffled))];
      close(estimatesOf(other), estimatesOf(one));
      close([...other.theta], [...one.theta], 3);
      expect(other.minusTwoLogLikelihood).toBeCloseTo(one.minusTwoLogLikelihood, 6);
    }),
    { numRuns: 20 },
  );
});

test('renaming the groups changes nothing but the names', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const { random } = termsOf(batches, (label) => `${9 - Number(label.slice(1))} farm`);
      const [one, other] = [fitOf(ofBatches(batches)), fitOf({ ...ofBatches(batches), random })];
      close(estimatesOf(other), estimatesOf(one));
      close([...other.theta], [...one.theta], 3);
    }),
    { numRuns: 20 },
  );
});

test('splitting a batch into rows of one unit each changes nothing but the likelihood by a constant', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const split = batches.flatMap((batch) =>
        Array.from({ length: batch.units }, (_, unit) => ({
          ...batch,
          units: 1,
          contaminated: unit < batch.contaminated ? 1 : 0,
        })),
      );
      const [one, other] = [fitOf(ofBatches(batches)), fitOf(ofBatches(split))];
      close(estimatesOf(other), estimatesOf(one));
      close([...other.theta], [...one.theta], 3);
    }),
    { numRuns: 10 },
  );
});

test('counting the clean units instead turns every sign', () => {
  fc.assert(
    fc.property(samples, ({ seed, count }) => {
      const batches = simulatedBatches(seed, count);
      const clean = batches.map((batch) => ({ ...batch, contaminated: batch.units - batch.contaminated }));
      close(
        estimatesOf(fitOf(ofBatches(clean))).map((value) => -value),
        estimatesOf(fitOf(ofBatches(batches))),
      );
    }),
    { numRuns: 20 },
  );
});

function withoutEvents(method: string) {
  return simulatedBatches(3, 90).map((batch) =>
    batch.method === method ? { ...batch, contaminated: 0 } : batch,
  );
}

test('a method without any event is answered by its reason, and the others by numbers', () => {
  const own = fitOf(ofBatches(withoutEvents('C')));
  expect(own.separated).toEqual(['methodC']);
  const rest = fitOf(ofBatches(withoutEvents('C').filter(({ method }) => method !== 'C')));
  expect(own.coefficients.find(({ name }) => name === 'methodB')?.estimate).toBeCloseTo(
    estimatesOf(rest)[1] ?? Number.NaN,
    5,
  );
});

test('when the reference method has no event every comparison with it is answered by a reason', () => {
  const own = fitOf(ofBatches(withoutEvents('A')));
  expect(own.separated).toEqual(['(Intercept)', 'methodB', 'methodC']);
  expect(own.coefficients.find(({ name }) => name === 'moisture')?.estimate).toBeTypeOf('number');
});

test('no event at all is answered by a reason', () => {
  const batches = simulatedBatches(4, 40).map((batch) => ({ ...batch, contaminated: 0 }));
  expect(fitBinomialMixed(ofBatches(batches))).toMatchObject({
    kind: 'cannot-compute',
    reason: 'separation',
  });
});

test('rare events without separation are estimated', () => {
  const trials = 1e9;
  const own = fitOf({
    events: [3, 1, 2, 4],
    trials: [trials, trials, trials, trials],
    fixed: [],
    random: [],
  });
  expect(estimatesOf(own)[0]).toBeCloseTo(Math.log(10 / (4 * trials - 10)), 6);
});

test('groups that are alike have a standard deviation of exactly 0 and are named', () => {
  const site = Array.from({ length: 40 }, (_, row) => `S${row % 8}`);
  const own = fitOf({
    events: site.map(() => 2),
    trials: site.map(() => 10),
    fixed: [],
    random: [{ name: 'site', values: site }],
  });
  expect(own.theta[0]).toBe(0);
  expect(own.zeroVarianceTerms).toEqual(['site']);
  expect(estimatesOf(own)[0]).toBeCloseTo(Math.log(0.25), 6);
});

test('terms with few levels are named, since limits are then too narrow', () => {
  expect(fitOf(ofBatches(simulatedBatches(6, 200, 4, 12))).fewLevels).toEqual(['site']);
  expect(fitOf(cbpp()).fewLevels).toEqual([]);
});

test('bad arguments are refused by name', () => {
  const of = (over: Partial<BinomialMixedInput>) => () =>
    fitBinomialMixed({ events: [1, 2], trials: [5, 5], fixed: [], random: [], ...over });
  expect(of({ events: [1, 6] })).toThrow('events[1]');
  expect(of({ events: [1, -1] })).toThrow('events[1]');
  expect(of({ events: [0.5, 1] })).toThrow('events[0]');
  expect(of({ events: [0, 0], trials: [5, 0] })).toThrow('trials[1]');
  expect(of({ trials: [5] })).toThrow('trials');
  expect(of({ offset: [0, Number.POSITIVE_INFINITY] })).toThrow('offset[1]');
  expect(of({ quadraturePoints: 9 })).toThrow('quadraturePoints');
});
