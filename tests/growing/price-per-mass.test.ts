import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pricePerMass } from '@/lib/growing/price-per-mass';
import { costOfMass } from '@/lib/growing/share-out';

const price = (minor: number) => ({ minor, currency: 'USD' });

test('half a cent for a kilogram is rounded up', () => {
  expect(pricePerMass(price(4505), 1360, 'kg')).toEqual(price(3313));
  expect(pricePerMass(price(999), 2160, 'kg')).toEqual(price(463));
});

test('a price for a kilogram is what a kilogram of it costs, to the cent', () => {
  fc.assert(
    fc.property(fc.nat(5_000_000), fc.integer({ min: 1, max: 500_000 }), (minor, grams) => {
      expect(pricePerMass(price(minor), grams, 'kg').minor).toBe(costOfMass(1000, minor, grams));
    }),
  );
});

test('a pound costs 0.45359237 of a kilogram', () => {
  expect(pricePerMass(price(10_000), 1000, 'lb')).toEqual(price(4536));
});
