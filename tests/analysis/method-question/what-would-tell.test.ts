import { expect, it } from 'vitest';
import type { BatchesNeeded } from '@/lib/analysis/method-question/batches-needed';
import { whatWouldTell } from '@/lib/analysis/method-question/what-would-tell';

const batches = (siteId: string, methodKey: string, count: number) =>
  Array.from({ length: count }, () => ({ siteId, methodKey }));
const farm = [...batches('farm', 'bath', 20), ...batches('farm', 'lime', 8)];
const ofEach = (count: number) => (): BatchesNeeded => ({ kind: 'of-each', ofEach: count });

it('asks for the batches that each method lacks, at sites that use both', () => {
  const few = [...batches('mill', 'lime', 2), ...batches('mill', 'steam', 3), ...batches('yard', 'lime', 9)];
  expect(whatWouldTell('lime', 'steam', 10, few, ofEach(59))).toEqual({
    kind: 'batches',
    lacks: [
      { method: 'lime', batches: 57 },
      { method: 'steam', batches: 56 },
    ],
    siteIds: ['mill'],
    points: 10,
  });
});

it('asks for fewer of one where there are more than enough of the other, and for none of that', () => {
  // 12 beside 20 tell as much as 15 of each: 1/12 + 1/20 = 2/15.
  expect(whatWouldTell('bath', 'lime', 5, farm, ofEach(15))).toMatchObject({
    lacks: [{ method: 'lime', batches: 4 }],
  });
});

it('reckons for as many sites as use both', () => {
  const asked: number[] = [];
  const all = [...farm, ...batches('court', 'lime', 9), ...batches('mill', 'lime', 1)];
  whatWouldTell('bath', 'lime', 5, [...all, ...batches('mill', 'bath', 1)], (sites) => {
    asked.push(sites);
    return { kind: 'of-each', ofEach: 40 };
  });
  expect(asked).toEqual([2]);
});

it('asks a site that knows one of the methods only for the other, and says whether there are batches enough', () => {
  const all = [...farm, ...batches('court', 'lime', 9)];
  const court = { kind: 'sites', method: 'bath', siteId: 'court', points: 5 };
  expect(whatWouldTell('bath', 'lime', 5, all, ofEach(5))).toEqual({ ...court, enough: true });
  expect(whatWouldTell('bath', 'lime', 5, all, () => ({ kind: 'more-sites' }))).toEqual({
    ...court,
    enough: false,
  });
  const apart = [...batches('farm', 'bath', 4), ...batches('court', 'lime', 3)];
  expect(whatWouldTell('bath', 'lime', 5, apart, ofEach(5))).toMatchObject({ kind: 'sites', enough: false });
  expect(whatWouldTell('bath', 'lime', 5, farm, ofEach(5))).toEqual({ kind: 'time' });
});

it('does not call batches enough where none could be reckoned', () => {
  const all = [...farm, ...batches('court', 'lime', 9)];
  expect(whatWouldTell('bath', 'lime', 5, all, () => ({ kind: 'unreckoned' }))).toEqual({
    kind: 'unreckoned',
  });
});
