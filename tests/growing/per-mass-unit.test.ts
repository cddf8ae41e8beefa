import { expect, test } from 'vitest';
import { massIn, perMassUnit } from '@/lib/growing/per-mass-unit';

test('what is for a kilogram is less than half as much for a pound', () => {
  expect(perMassUnit(1000, 'kg')).toBe(1000);
  expect(perMassUnit(1000, 'lb')).toBeCloseTo(453.59237, 10);
});

test('grams times what is for their unit is the same money in either unit', () => {
  for (const grams of [1, 454, 12_345])
    expect(massIn('lb', grams) * perMassUnit(812, 'lb')).toBeCloseTo(
      massIn('kg', grams) * perMassUnit(812, 'kg'),
      9,
    );
});
