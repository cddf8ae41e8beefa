import { expect, test } from 'vitest';
import { roundTicks } from '@/lib/ui/chart/plot-scale';

test('an axis counts in round numbers from 0, none beyond the most', () => {
  expect(roundTicks(1283)).toEqual([0, 500, 1000]);
  expect(roundTicks(90)).toEqual([0, 20, 40, 60, 80]);
});
