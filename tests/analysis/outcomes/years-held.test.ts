import { expect, it } from 'vitest';
import { splitPeriod } from '@/lib/analysis/outcomes/split-period';
import { stretchesOf, yearsBeyond, yearsOf, yearsOfBoth } from '@/lib/analysis/outcomes/years-held';

const held = { from: '2019-03-02', to: '2026-05-20' };

it('the years of a period are those of its whole years, its quarters and its days', () => {
  expect(yearsOf(splitPeriod({ from: '2020-11-20', to: '2023-02-03' }, held))).toEqual([
    2020, 2021, 2022, 2023,
  ]);
  expect(yearsOf(splitPeriod({ from: '2022-04-01', to: '2022-09-30' }, held))).toEqual([2022]);
});

it('a period beyond all batches takes in the years of batches only', () => {
  expect(yearsOf(splitPeriod({ from: '2000-01-01', to: '2100-01-01' }, held))).toEqual([
    2019, 2020, 2021, 2022, 2023, 2024, 2025, 2026,
  ]);
});

it('only the years that are not held are read, those that follow each other in one stretch', () => {
  const both = yearsOfBoth([2020, 2025], [2026, 2020, 2023]);
  expect(both).toEqual([2020, 2023, 2025, 2026]);
  expect(stretchesOf(yearsBeyond(both, [2020]))).toEqual([
    ['2023-01-01', '2023-12-31'],
    ['2025-01-01', '2026-12-31'],
  ]);
  expect(stretchesOf(yearsBeyond(both, both))).toEqual([]);
});
