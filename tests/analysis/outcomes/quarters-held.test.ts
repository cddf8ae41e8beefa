import { expect, it } from 'vitest';
import {
  quartersBeyond,
  quartersOf,
  quartersOfBoth,
  stretchesOf,
} from '@/lib/analysis/outcomes/quarters-held';
import { splitPeriod } from '@/lib/analysis/outcomes/split-period';

const held = { from: '2019-03-02', to: '2026-05-20' };
const quartersIn = (from: string, to: string) => quartersOf(splitPeriod({ from, to }, held));

it('the quarters of a period are those of its whole years, its quarters and its days', () => {
  expect(stretchesOf(quartersIn('2020-11-20', '2023-02-03'))).toEqual([['2020-10-01', '2023-03-31']]);
  expect(stretchesOf(quartersIn('2022-04-01', '2022-09-30'))).toEqual([['2022-04-01', '2022-09-30']]);
  expect(stretchesOf(quartersIn('2021-10-05', '2021-12-30'))).toEqual([['2021-10-01', '2021-12-31']]);
});

it('a period beyond all batches takes in the years of batches only', () => {
  expect(stretchesOf(quartersIn('2000-01-01', '2100-01-01'))).toEqual([['2019-01-01', '2026-12-31']]);
});

it('only the quarters that are not held are read, those that follow each other in one stretch', () => {
  const before = quartersIn('2022-04-01', '2022-06-30');
  const both = quartersOfBoth(quartersIn('2022-10-01', '2023-06-30'), before);
  expect(stretchesOf(both)).toEqual([
    ['2022-04-01', '2022-06-30'],
    ['2022-10-01', '2023-06-30'],
  ]);
  expect(stretchesOf(quartersBeyond(both, before))).toEqual([['2022-10-01', '2023-06-30']]);
  expect(stretchesOf(quartersBeyond(both, both))).toEqual([]);
});
