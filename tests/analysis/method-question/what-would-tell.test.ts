import { expect, it } from 'vitest';
import { neededForYield, whatWouldTell } from '@/lib/analysis/method-question/what-would-tell';

const batches = (siteId: string, methodKey: string, count: number) =>
  Array.from({ length: count }, () => ({ siteId, methodKey }));
const farm = [...batches('farm', 'bath', 20), ...batches('farm', 'lime', 8)];

it('asks for the batches that are missing, at the site where they tell most', () => {
  expect(whatWouldTell('bath', 'lime', { ofEach: 30, points: 5 }, farm)).toEqual({
    kind: 'batches',
    method: 'lime',
    batches: 22,
    siteId: 'farm',
    points: 5,
  });
});

it('asks a site that knows one of the methods only for the other, where there are batches enough', () => {
  const all = [...farm, ...batches('court', 'lime', 9)];
  const enough = { ofEach: 5, points: 5 };
  expect(whatWouldTell('bath', 'lime', enough, all)).toEqual({
    kind: 'sites',
    method: 'bath',
    siteId: 'court',
  });
  expect(whatWouldTell('bath', 'lime', enough, farm)).toEqual({ kind: 'time' });
});

it('reckons batches for a difference of yield from what batches of one site and method differ by', () => {
  const needed = (residual: number, run: number) =>
    neededForYield({
      varianceComponents: [
        { term: 'site', levels: 12, variance: 400, standardDeviation: 20 },
        { term: 'run', levels: 90, variance: run, standardDeviation: Math.sqrt(run) },
      ],
      residualStandardDeviation: residual,
    });
  // R: power.t.test(delta = 10, sd = 20, power = 0.8)$n is 63.77.
  expect(needed(Math.sqrt(300), 100)).toEqual({ ofEach: 64, points: 10 });
  expect(needed(20, 0)).toEqual({ ofEach: 64, points: 10 });
});
