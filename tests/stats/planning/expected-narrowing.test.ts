import { expect, test } from 'vitest';
import { contrastError, narrowedCovariance } from '../../../lib/stats/planning/expected-narrowing';

test('two independent values: observing one leaves it the harmonic sum of variances and the other as it was', () => {
  const [first, second] = narrowedCovariance(
    [
      [4, 0],
      [0, 9],
    ],
    0,
    12,
  );
  expect(first).toEqual([3, 0]);
  expect(second).toEqual([0, 9]);
});

test('what is observed tells of what goes with it', () => {
  const left = narrowedCovariance(
    [
      [4, 2],
      [2, 9],
    ],
    0,
    0,
  );
  expect(left).toEqual([
    [0, 0],
    [0, 8],
  ]);
});

test('a value that is known exactly teaches nothing', () => {
  expect(
    narrowedCovariance(
      [
        [0, 0],
        [0, 9],
      ],
      0,
      0,
    ),
  ).toEqual([
    [0, 0],
    [0, 9],
  ]);
});

test('the error of a difference leaves out what both share', () => {
  expect(
    contrastError(
      [
        [5, 4],
        [4, 5],
      ],
      [0, 1],
    ),
  ).toBeCloseTo(Math.SQRT2, 12);
});
