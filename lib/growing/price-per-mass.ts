import { gramsPerKilogram, gramsPerPound } from './mass-units';
import type { Money } from './money';

/** What one kilogram or pound comes to of a price paid for `grams` (above 0), in whole minor units, half a unit rounded up. */
export function pricePerMass(price: Money, grams: number, unit: 'kg' | 'lb'): Money {
  // Multiplied first: in kilograms whole numbers are divided once, so that half a cent is exactly half a cent.
  const product = price.minor * (unit === 'kg' ? gramsPerKilogram : gramsPerPound);
  return { ...price, minor: Math.round(product / grams) };
}
