import { expect, test } from 'vitest';
import { expectBinomial } from '../../../lib/stats/mixed/binomial/expect-binomial';
import { fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import { predictBinomial } from '../../../lib/stats/mixed/binomial/predict-binomial';
import { expectLinear } from '../../../lib/stats/mixed/linear/expect-linear';
import { fitLinearMixed } from '../../../lib/stats/mixed/linear/fit-linear';
import { predictLinear } from '../../../lib/stats/mixed/linear/predict-linear';
import { seededRandom } from '../../../lib/stats/random/seeded-random';
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

type Named = Readonly<Record<string, string | number>>;

/** x'(inverse of the mixed model equations) x of each two rows, every level of every term a column of its own. */
function covarianceByEquations(
  observed: readonly Named[],
  wanted: readonly Named[],
  fixedOf: (row: Named) => readonly number[],
  terms: readonly { readonly name: string; readonly variance: number }[],
  sigma2: number,
): number[][] {
  const levels = terms.flatMap(({ name, variance }) =>
    [...new Set(observed.map((row) => row[name]))].map((level) => ({ name, level, variance })),
  );
  const design = (row: Named) => [
    ...fixedOf(row),
    ...levels.map(({ name, level }) => (row[name] === level ? 1 : 0)),
  ];
  const rowsOf = observed.map(design);
  const size = rowsOf[0]?.length ?? 0;
  const fixed = size - levels.length;
  const equations = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  for (const row of rowsOf) {
    const at = row.flatMap((value, i) => (value === 0 ? [] : [i]));
    for (const i of at)
      for (const j of at)
        (equations[i] as number[])[j] = (equations[i]?.[j] ?? 0) + ((row[i] ?? 0) * (row[j] ?? 0)) / sigma2;
  }
  for (const [k, { variance }] of levels.entries()) {
    const own = equations[fixed + k] as number[];
    own[fixed + k] = (own[fixed + k] ?? 0) + 1 / variance;
  }
  const inverted = inverse(equations);
  const some = wanted.map(design);
  return some.map((one) =>
    some.map((other) => {
      let value = 0;
      for (let a = 0; a < size; a += 1)
        for (let b = 0; b < size; b += 1) value += (one[a] ?? 0) * (inverted[a]?.[b] ?? 0) * (other[b] ?? 0);
      return value;
    }),
  );
}

test('the covariance is that of the inverse of the mixed model equations', () => {
  const wanted = covarianceByEquations(
    batches,
    rows,
    ({ method, moisture }) => [1, method === 'B' ? 1 : 0, method === 'C' ? 1 : 0, Number(moisture)],
    linear.varianceComponents.map(({ term, variance }) => ({ name: term, variance })),
    linear.residualStandardDeviation ** 2,
  );
  const [answer] = expectLinear(linear, [rows]);
  expect(answer?.covariance.flat()).toHaveLength(9);
  answer?.covariance.flat().forEach((value, at) => {
    expect(value).toBeCloseTo(wanted.flat()[at] ?? Number.NaN, 6);
  });
});

test('so it is where most levels are eliminated before the rest, several sets asked in turn', () => {
  const random = seededRandom(11);
  const named = ['site', 'site x method', 'lot', 'run'] as const;
  const data = Array.from({ length: 240 }, (_, row) => {
    const [site, method] = [row % 12, ['A', 'B', 'C'][(row >> 2) % 3] ?? 'A'];
    const lot = 4 * (site % 3) + random.integer(4);
    return {
      site: `s${site}`,
      method,
      'site x method': `s${site} ${method}`,
      lot: `l${lot}`,
      run: `r${row >> 1}`,
    };
  });
  const effects = new Map<string, number>();
  const effectOf = (label: string) =>
    effects.get(label) ?? effects.set(label, random.normal()).get(label) ?? 0;
  const fit = estimated(
    fitLinearMixed({
      response: data.map((row) => named.reduce((sum, name) => sum + effectOf(row[name]), random.normal())),
      fixed: [{ kind: 'factor', name: 'method', values: data.map(({ method }) => method) }],
      random: named.map((name) => ({ name, values: data.map((row) => row[name]) })),
    }),
  );
  expect(fit.zeroVarianceTerms).toEqual([]);
  expect(fit.model.system.plan.headSize).toBeGreaterThan(100);
  const sets = ['s0', 's5', 's0'].map((site) =>
    ['A', 'B', 'C', 'A'].map((method, at) => ({
      ...{ site, method, 'site x method': `${site} ${method}` },
      ...(at === 3 ? { lot: 'l1', run: 'r7' } : {}),
    })),
  );
  const answers = expectLinear(fit, sets);
  expect(answers).toHaveLength(3);
  sets.forEach((set, place) => {
    const wanted = covarianceByEquations(
      data,
      set,
      ({ method }) => [1, method === 'B' ? 1 : 0, method === 'C' ? 1 : 0],
      fit.varianceComponents.map(({ term, variance }) => ({ name: term, variance })),
      fit.residualStandardDeviation ** 2,
    ).flat();
    const found = answers[place]?.covariance.flat() ?? [];
    expect(found).toHaveLength(16);
    found.forEach((value, at) => {
      expect(value).toBeCloseTo(wanted[at] ?? Number.NaN, 6);
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
