import { describe, expect, it } from 'vitest';
import { fitBinomialMixed } from '@/lib/stats/mixed/binomial/fit-binomial';
import { predictBinomial } from '@/lib/stats/mixed/binomial/predict-binomial';
import type { NewRow } from '@/lib/stats/mixed/design/fixed-term';
import { fitLinearMixed } from '@/lib/stats/mixed/linear/fit-linear';
import { predictLinear } from '@/lib/stats/mixed/linear/predict-linear';
import { seededRandom } from '@/lib/stats/random/seeded-random';

const random = seededRandom(5);
const methods = ['lime', 'bath', 'ferment'];
/** Lots go to a third of the sites each, so that some sites and lots never meet. */
const rows = Array.from({ length: 600 }, (_, row) => {
  const site = row % 30;
  const lot = (site % 3) * 10 + random.integer(10);
  return { site: `site ${site}`, lot: `lot ${lot}`, run: `run ${row >> 1}`, method: methods[row % 3] ?? '' };
});
const effects = new Map(
  [...new Set(rows.flatMap(({ site, lot }) => [site, lot]))].map((name) => [name, random.normal()]),
);
const of = (name: string) => effects.get(name) ?? 0;
const response = rows.map(({ site, lot }) => 0.5 * of(site) + 0.4 * of(lot) + 0.3 * random.normal());
const events = rows.map(
  ({ site, lot }) =>
    Array.from({ length: 20 }, () => random.next()).filter(
      (draw) => draw < 1 / (1 + Math.exp(1 - of(site) / 2 - of(lot) / 3)),
    ).length,
);
const fixed = [{ kind: 'factor' as const, name: 'method', values: rows.map(({ method }) => method) }];
const terms = (['site', 'lot', 'run'] as const).map((name) => ({
  name,
  values: rows.map((row) => row[name]),
}));

/** Seen together, never together, in part, not at all, and of levels without data. */
const asked: NewRow[] = [
  ...rows.slice(0, 90).map(({ method, site, lot, run }): NewRow => ({ method, site, lot, run })),
  ...rows.slice(0, 60).map(({ method, site }, row): NewRow => ({ method, site, lot: `lot ${row % 30}` })),
  ...rows.slice(0, 60).map(({ method, site }): NewRow => ({ method, site })),
  ...methods.map((method): NewRow => ({ method })),
  { method: 'lime', site: 'a new one', lot: 'lot 3' },
];

describe('many new rows at once', () => {
  it('are predicted by a linear model as one by one', () => {
    const fit = fitLinearMixed({ response, fixed, random: terms });
    if (fit.kind !== 'estimate') throw new Error(fit.reason);
    expectAlike(
      predictLinear(fit, asked),
      asked.map((row) => predictLinear(fit, [row])[0]),
    );
  });

  it('are predicted by a binomial model as one by one', () => {
    const fit = fitBinomialMixed({ events, trials: events.map(() => 20), fixed, random: terms });
    if (fit.kind !== 'estimate') throw new Error(fit.reason);
    expectAlike(
      predictBinomial(fit, asked),
      asked.map((row) => predictBinomial(fit, [row])[0]),
    );
  });
});

/** Every number of the one within rounding of the same of the other. */
function expectAlike(together: unknown, apart: unknown): void {
  const numbers = (value: unknown): number[] =>
    typeof value === 'number'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(numbers)
        : [];
  const [some, others] = [numbers(together), numbers(apart)];
  expect(some.length).toBeGreaterThan(1000);
  expect(some.length).toBe(others.length);
  some.forEach((value, at) => {
    expect(value).toBeCloseTo(others[at] ?? Number.NaN, 9);
  });
}
