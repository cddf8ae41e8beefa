import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import { type FitStart, startOfFit } from '../../../lib/stats/mixed/fit-start';
import { fitLinearMixed } from '../../../lib/stats/mixed/linear/fit-linear';
import { estimated, readMixedCase } from '../../reference/mixed/mixed-case';
import { numbers } from '../../reference/mixed/model-formula';
import { estimatesOf, simulatedBatches, termsOf } from './simulated-batches';

const file = z.object({ cases: z.array(z.object({ id: z.string(), input: z.unknown() })) });

/** Every case of a file of reference values as a fit from a start, but for random slopes, which are not offered. */
function casesOf(name: string, kind: 'linear' | 'binomial') {
  const path = new URL(`../../reference/data/${name}.json`, import.meta.url);
  return file.parse(JSON.parse(readFileSync(path, 'utf8'))).cases.flatMap(({ id, input }) => {
    const { formula, data, fixed, random, intercept } = readMixedCase(input);
    if (random.length === 0) return [];
    const terms = { fixed, random, intercept };
    const [, events = '', trials = ''] = /^cbind\(\s*(\w+)\s*,\s*(\w+)/.exec(formula.response) ?? [];
    const fit = (start?: FitStart) =>
      kind === 'linear'
        ? estimated(
            fitLinearMixed({
              ...terms,
              response: numbers(data, formula.response),
              ...(start ? { start } : {}),
            }),
          )
        : estimated(
            fitBinomialMixed({
              ...terms,
              events: numbers(data, events),
              trials: numbers(data, trials),
              ...(start ? { start } : {}),
            }),
          );
    return [{ id, terms: random.map((term) => term.name), fit }];
  });
}

const cases = [...casesOf('07_lmm', 'linear'), ...casesOf('08_glmm_binomial', 'binomial')];
type Fit = ReturnType<(typeof cases)[number]['fit']>;

function expectSame(one: Fit, other: Fit) {
  expect(one.minusTwoLogLikelihood).toBeCloseTo(other.minusTwoLogLikelihood, 8);
  const parts = (fit: Fit) => [
    ...estimatesOf(fit),
    ...fit.varianceComponents.map(({ standardDeviation }) => standardDeviation),
  ];
  const expected = parts(other);
  for (const [at, value] of parts(one).entries()) {
    const own = expected[at] ?? 0;
    if (Number.isFinite(own)) expect(Math.abs(value - own)).toBeLessThan(1e-4 * (1 + Math.abs(own)));
  }
}

describe.each(cases)('the reference model $id', ({ terms, fit }) => {
  const cold = fit();
  const own = startOfFit(cold);
  const all = (value: number) => Object.fromEntries(terms.map((name) => [name, value]));

  it('comes out the same from its own answer, with fewer evaluations', () => {
    const warm = fit(own);
    expectSame(warm, cold);
    expect(warm.evaluations).toBeLessThan(cold.evaluations);
  });

  it.each([
    ['all variances at nothing', { ...own, deviations: all(0) }],
    ['variances far too large', { ...own, deviations: all(30 * (own.residual ?? 1)) }],
    ['coefficients far off', { ...own, coefficients: { '(Intercept)': 40 } }],
    ['a term that is not in the start', { ...own, deviations: {} }],
  ])('comes out the same from a bad start: %s', (_, start) => {
    expectSame(fit(start), cold);
  });

  it.each([
    ['not a number', Number.NaN],
    ['negative', -1],
    ['endless', Number.POSITIVE_INFINITY],
  ])('passes over a start that is %s, to the last digit', (_, value) => {
    const nonsense = fit({ ...own, deviations: all(value), residual: 1 });
    expect(nonsense.evaluations).toBe(cold.evaluations);
    expect(nonsense.minusTwoLogLikelihood).toBe(cold.minusTwoLogLikelihood);
  });
});

describe('a fit to one batch in a hundred more', () => {
  const before = simulatedBatches(7, 2_000, 12, 40);
  const after = simulatedBatches(7, 2_020, 12, 40);

  it('needs fewer evaluations from where the last one ended, and ends where it would have ended without', () => {
    const of = (batches: typeof before, start?: FitStart) => {
      const given = start ? { start } : {};
      const { fixed, random } = termsOf(batches);
      const counts = {
        events: batches.map(({ contaminated }) => contaminated),
        trials: batches.map(({ units }) => units),
      };
      return [
        estimated(fitBinomialMixed({ ...counts, fixed, random, ...given })),
        estimated(fitLinearMixed({ response: batches.map(({ be }) => be), fixed, random, ...given })),
      ];
    };
    const colds = of(after);
    for (const [at, earlier] of of(before).entries()) {
      const cold = colds[at] as Fit;
      const warm = of(after, startOfFit(earlier))[at] as Fit;
      expectSame(warm, cold);
      expect(warm.evaluations).toBeLessThan(cold.evaluations);
    }
  });
});
