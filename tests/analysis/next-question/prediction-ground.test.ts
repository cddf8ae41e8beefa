import { expect, test } from 'vitest';
import { predictionGround } from '@/lib/analysis/next-question/prediction-ground';
import type { ShownFigure } from '@/lib/analysis/shown-figure';

const figure = (batches: number, sites: number, contaminated: number, rowsQuery = ''): ShownFigure => ({
  kind: 'counts',
  reason: 'too-few-runs',
  unit: 'percent',
  n: { batches, units: batches * 20, runs: batches, sites },
  parts: { numerator: contaminated, denominator: batches * 20, unit: 'units' },
  method: { code: 'clustered-proportion', source: '', clusteredBy: 'treatment-run' },
  marks: [],
  leftOut: [{ reason: 'not-inspected', batches, units: batches * 20 }],
  asOf: '2026-07-01T00:00:00Z',
  rowsQuery,
});

test('a site cannot take its own off and read another: no sums, and no number that fewer than three others share', () => {
  const own = figure(5, 1, 9);
  const two = predictionGround(figure(12, 3, 40), own);
  expect(two).toMatchObject({ n: own.n, leftOut: own.leftOut, parts: { numerator: 0, denominator: 0 } });
  const three = predictionGround(figure(19, 4, 40), own);
  expect(three).toMatchObject({ n: { batches: 19 }, parts: { numerator: 0 } });
});

test('what was left out, what marks it and the rows are of the very batches that are counted', () => {
  const own: ShownFigure = { ...figure(5, 1, 9, 'site=mill'), marks: ['few-batches'] };
  const network = (sites: number): ShownFigure => ({
    ...figure(215, sites, 40, 'method=bath'),
    marks: ['species-pooled'],
  });
  expect(predictionGround(network(4), own)).toMatchObject({
    n: { batches: 215 },
    leftOut: network(4).leftOut,
    marks: ['species-pooled'],
    rowsQuery: 'method=bath',
  });
  expect(predictionGround(network(3), own)).toMatchObject({
    n: { batches: 5 },
    leftOut: own.leftOut,
    marks: ['few-batches', 'others-untold'],
    rowsQuery: 'site=mill',
  });
});

test('a site that has none of its own counts among nobody', () => {
  const none = { ...figure(0, 0, 0), leftOut: [] };
  expect(predictionGround(figure(12, 2, 40), none).n.batches).toBe(0);
  expect(predictionGround(figure(12, 3, 40), none).n.batches).toBe(12);
});

test('what rests on one or two other sites says so, since their number is not told', () => {
  const none = { ...figure(0, 0, 0), leftOut: [] };
  expect(predictionGround(figure(12, 2, 40), none).marks).toEqual(['others-untold']);
  expect(predictionGround(figure(12, 3, 40), none).marks).toEqual([]);
  expect(predictionGround(figure(5, 1, 9), figure(5, 1, 9))).toMatchObject({ n: { batches: 5 }, marks: [] });
});
