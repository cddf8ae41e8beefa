import { expect, it } from 'vitest';
import { neededForLoss, neededForYield } from '@/lib/analysis/method-question/batches-needed';
import { normalQuantile } from '@/lib/stats/distribution/normal';
import { simulatedLots } from '../lot-question/simulated-lots';

const alone = { sites: 8, pairs: 1 };

const component = (term: string, variance: number) => ({
  term,
  levels: 20,
  variance,
  standardDeviation: Math.sqrt(variance),
});

const yields = (residual: number, run: number, siteByMethod: number, judged = alone) =>
  neededForYield(
    {
      varianceComponents: [
        component('site', 400),
        component('run', run),
        component('site x method', siteByMethod),
      ],
      residualStandardDeviation: residual,
    },
    judged,
  );

const count = (needed: ReturnType<typeof neededForYield>) => {
  if (needed.kind !== 'of-each') throw new Error(needed.kind);
  return needed.ofEach;
};

it('reckons batches for a difference of yield from what batches of one site and method differ by', () => {
  // R: power.t.test(delta = 10, sd = 20, power = 0.8)$n is 63.77.
  expect(yields(Math.sqrt(300), 100, 0)).toEqual({ kind: 'of-each', ofEach: 64 });
  expect(yields(20, 0, 0)).toEqual({ kind: 'of-each', ofEach: 64 });
});

it('counts in that methods do not do the same at every site, which more batches of these sites do not mend', () => {
  const [siteByMethod, sites] = [30, 8];
  const of = count(yields(20, 0, siteByMethod, { sites, pairs: 1 }));
  // The difference over its standard error must reach the two quantiles, sites and batches both in the error.
  const reach = normalQuantile(0.975) + normalQuantile(0.8);
  expect(10 / Math.sqrt((2 * siteByMethod) / sites + (2 * 400) / of)).toBeCloseTo(reach, 1);
  expect(of).toBeGreaterThan(150);
  expect(yields(20, 0, siteByMethod, { sites: 4, pairs: 1 })).toEqual({ kind: 'more-sites' });
});

it('takes the level that is left to the least of all p-values where several pairs are judged together', () => {
  // By the normal distribution 2 (z(1 - 0.05 / 12) + z(0.8))^2 20^2 / 10^2 = 96.9; the t test takes a little more.
  expect(count(yields(20, 0, 0, { sites: 8, pairs: 6 }))).toBeGreaterThan(95);
  expect(count(yields(20, 0, 0, { sites: 8, pairs: 6 }))).toBeLessThan(100);
});

it('does the same for losses', () => {
  const batches = simulatedLots({ seed: 7, lots: 4, batchesPerLot: 12, lotDeviation: 0.8, badLogit: 0 });
  const ground = { percent: 12, correlation: 0.05, siteByMethod: 0, batches };
  const of = count(neededForLoss(ground, alone));
  expect(count(neededForLoss(ground, { ...alone, pairs: 6 }))).toBeGreaterThan(1.3 * of);
  expect(count(neededForLoss({ ...ground, siteByMethod: 0.02 }, alone))).toBeGreaterThan(of);
  expect(neededForLoss({ ...ground, siteByMethod: 0.5 }, alone)).toEqual({ kind: 'more-sites' });
});

it('reckons nothing where there is nothing to reckon with', () => {
  expect(yields(0, 0, 0)).toEqual({ kind: 'unreckoned' });
  expect(neededForLoss({ percent: 12, correlation: 0, siteByMethod: 0, batches: [] }, alone)).toEqual({
    kind: 'unreckoned',
  });
});
