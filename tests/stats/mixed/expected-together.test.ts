import { expect, test } from 'vitest';
import { expectBinomial } from '../../../lib/stats/mixed/binomial/expect-binomial';
import { fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import { predictBinomial } from '../../../lib/stats/mixed/binomial/predict-binomial';
import { expectLinear } from '../../../lib/stats/mixed/linear/expect-linear';
import { fitLinearMixed } from '../../../lib/stats/mixed/linear/fit-linear';
import { predictLinear } from '../../../lib/stats/mixed/linear/predict-linear';
import { estimated } from '../../reference/mixed/mixed-case';
import { simulatedBatches, termsOf } from './simulated-batches';

const batches = simulatedBatches(31, 80);
const linear = estimated(fitLinearMixed({ response: batches.map(({ be }) => be), ...termsOf(batches) }));
const binomial = estimated(
  fitBinomialMixed({
    events: batches.map(({ contaminated }) => contaminated),
    trials: batches.map(({ units }) => units),
    ...termsOf(batches),
  }),
);
const rows = ['A', 'B', 'C'].map((method) => ({ method, moisture: 60, site: 'S1' }));

/** The inverse of a small symmetric matrix by Gauss and Jordan, as another way to the same numbers. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let at = 0; at < size; at += 1) {
    const pivot = work[at] as number[];
    const by = pivot[at] as number;
    for (let j = 0; j < 2 * size; j += 1) pivot[j] = (pivot[j] as number) / by;
    for (let i = 0; i < size; i += 1) {
      const other = work[i] as number[];
      const factor = other[at] as number;
      if (i === at || factor === 0) continue;
      for (let j = 0; j < 2 * size; j += 1) other[j] = (other[j] as number) - factor * (pivot[j] as number);
    }
  }
  return work.map((row) => row.slice(size));
}

test('the covariance is that of the inverse of the mixed model equations', () => {
  const sites = [...new Set(batches.map(({ site }) => site))].sort();
  const lots = [...new Set(batches.map(({ lot }) => lot))].sort();
  const design = (row: { method: string; moisture: number; site?: string; lot?: string }) => [
    1,
    row.method === 'B' ? 1 : 0,
    row.method === 'C' ? 1 : 0,
    row.moisture,
    ...sites.map((site) => (site === row.site ? 1 : 0)),
    ...lots.map((lot) => (lot === row.lot ? 1 : 0)),
  ];
  const sigma2 = linear.residualStandardDeviation ** 2;
  const [ofSites, ofLots] = linear.varianceComponents.map(({ variance }) => variance);
  const observed = batches.map(design);
  const size = observed[0]?.length ?? 0;
  const equations = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => {
      const sum = observed.reduce((total, row) => total + (row[i] ?? 0) * (row[j] ?? 0), 0) / sigma2;
      const variance = i < 4 ? undefined : i < 4 + sites.length ? ofSites : ofLots;
      return i === j && variance !== undefined ? sum + 1 / variance : sum;
    }),
  );
  const inverted = inverse(equations);
  const wanted = rows.map(design);
  const [answer] = expectLinear(linear, [rows]);
  wanted.forEach((one, i) => {
    wanted.forEach((other, j) => {
      let value = 0;
      for (let a = 0; a < size; a += 1)
        for (let b = 0; b < size; b += 1) value += (one[a] ?? 0) * (inverted[a]?.[b] ?? 0) * (other[b] ?? 0);
      expect(answer?.covariance[i]?.[j]).toBeCloseTo(value, 6);
    });
  });
});

test('rows that name every term are expected as predicted, in both models', () => {
  const named = rows.map((row) => ({ ...row, lot: 'L2' }));
  const [ofLinear] = expectLinear(linear, [named]);
  predictLinear(linear, named)
    .map(estimated)
    .forEach(({ group }, at) => {
      expect(ofLinear?.estimates[at]).toBeCloseTo(group.estimate, 8);
      expect(Math.sqrt(ofLinear?.covariance[at]?.[at] ?? 0)).toBeCloseTo(group.standardError, 8);
    });
  const [ofBinomial] = expectBinomial(binomial, [named]);
  predictBinomial(binomial, named)
    .map(estimated)
    .forEach(({ group }, at) => {
      expect(ofBinomial?.estimates[at]).toBeCloseTo(group.logit, 8);
      expect(Math.sqrt(ofBinomial?.covariance[at]?.[at] ?? 0)).toBeCloseTo(group.logitStandardError, 8);
    });
});

test('what two rows share of a site without data does not count in their difference', () => {
  const errorOf = (site: string) => {
    const [answer] = expectLinear(linear, [rows.map((row) => ({ ...row, site }))]);
    const at = (i: number, j: number) => answer?.covariance[i]?.[j] ?? Number.NaN;
    return { own: at(0, 0), apart: at(0, 0) + at(1, 1) - 2 * at(0, 1) };
  };
  const variance = linear.varianceComponents[0]?.variance ?? 0;
  const unseen = errorOf('new');
  expect(unseen.own).toBeGreaterThan(variance);
  const [typical] = expectLinear(linear, [rows.map(({ site: _site, ...row }) => row)]);
  const at = (i: number, j: number) => typical?.covariance[i]?.[j] ?? Number.NaN;
  expect(unseen.own).toBeCloseTo(at(0, 0) + variance, 8);
  expect(unseen.apart).toBeCloseTo(at(0, 0) + at(1, 1) - 2 * at(0, 1), 8);
});
