import { expect, test } from 'vitest';
import { fitLinearMixed } from '../../../../lib/stats/mixed/linear/fit-linear';
import { linearMeansSource } from '../../../../lib/stats/mixed/linear/linear-means';
import { marginalMeans } from '../../../../lib/stats/mixed/means/marginal-means';
import { pairwiseDifferences } from '../../../../lib/stats/mixed/means/pairwise-differences';
import { estimated } from '../../../reference/mixed/mixed-case';
import { simulatedBatches, termsOf } from '../simulated-batches';

const METHOD = ['A', 'A', 'B', 'B', 'A', 'A', 'B'];
const SITE = ['x', 'x', 'x', 'x', 'y', 'y', 'y'];
const factor = (name: string, values: readonly string[]) => ({ kind: 'factor' as const, name, values });

test('means over sites count every site alike, however many batches it has', () => {
  const fitted = estimated(
    fitLinearMixed({
      response: [10, 12, 20, 22, 30, 32, 41],
      fixed: [
        factor('method', METHOD),
        factor('site', SITE),
        { kind: 'interaction', of: ['method', 'site'] },
      ],
      random: [],
    }),
  );
  const means = marginalMeans(linearMeansSource(fitted), 'method').map(estimated);
  // Cell means 11 and 31 of A, 21 and 41 of B, averaged with equal weight.
  expect(means[0]?.estimate).toBeCloseTo(21, 8);
  expect(means[1]?.estimate).toBeCloseTo(31, 8);
  expect(means[0]?.degreesOfFreedom).toBeCloseTo(3, 6);
});

test('a method not used at one of the sites has no mean over both, and says so', () => {
  const fitted = estimated(
    fitLinearMixed({
      response: [10, 12, 20, 22, 30, 32],
      fixed: [
        factor('method', METHOD.slice(0, 6)),
        factor('site', SITE.slice(0, 6)),
        { kind: 'interaction', of: ['method', 'site'] },
      ],
      random: [],
    }),
  );
  const source = linearMeansSource(fitted);
  expect(marginalMeans(source, 'method').map(({ kind }) => kind)).toEqual(['estimate', 'cannot-compute']);
  expect(pairwiseDifferences(source, 'method')[0]).toMatchObject({
    kind: 'cannot-compute',
    first: 'A',
    second: 'B',
  });
});

test('the difference of two means does not depend on which method is the reference', () => {
  const batches = simulatedBatches(12, 60);
  const { fixed, random } = termsOf(batches);
  const response = batches.map(({ be }) => be);
  const difference = (levels: readonly string[]) => {
    const own = estimated(
      fitLinearMixed({
        response,
        fixed: fixed.map((term) => (term.kind === 'factor' ? { ...term, levels } : term)),
        random,
      }),
    );
    const pairs = pairwiseDifferences(linearMeansSource(own), 'method').map(estimated);
    return pairs.find(({ first, second }) => [first, second].sort().join() === 'A,C');
  };
  const [one, other] = [difference(['A', 'B', 'C']), difference(['C', 'A', 'B'])];
  expect(Math.abs(one?.estimate ?? 0)).toBeCloseTo(Math.abs(other?.estimate ?? 1), 5);
  expect(one?.tukeyPValue).toBeCloseTo(other?.tukeyPValue ?? 0, 5);
  expect(one?.degreesOfFreedom).toBeCloseTo(other?.degreesOfFreedom ?? 0, 2);
});

test('adjusted p-values and intervals are never more certain than unadjusted ones', () => {
  const batches = simulatedBatches(13, 60);
  const own = estimated(fitLinearMixed({ response: batches.map(({ be }) => be), ...termsOf(batches) }));
  for (const pair of pairwiseDifferences(linearMeansSource(own), 'method').map(estimated)) {
    expect(pair.tukeyPValue).toBeGreaterThanOrEqual(pair.pValue);
    expect(pair.holmPValue).toBeGreaterThanOrEqual(pair.pValue);
    expect(pair.bonferroniPValue).toBeGreaterThanOrEqual(pair.holmPValue);
    expect(pair.tukeyInterval.low).toBeLessThan(pair.interval.low);
    expect(pair.tukeyInterval.high).toBeGreaterThan(pair.interval.high);
  }
});

test('a factor that the model does not have is refused by name', () => {
  const own = estimated(fitLinearMixed({ response: [1, 2, 4], fixed: [], random: [] }));
  expect(() => marginalMeans(linearMeansSource(own), 'method')).toThrow('factor');
});
