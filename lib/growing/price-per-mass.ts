import { gramsPerKilogram, gramsPerPound } from './mass-units';
import type { Money } from './money';
import { costOfMass } from './share-out';

/** Where a pound is a whole number, too: hundred-thousandths of a gram. */
const perGram = 100_000;

/** What one kilogram or pound comes to of a price paid for `grams` (above 0), in whole minor units, half a unit rounded up. */
export function pricePerMass(price: Money, grams: number, unit: 'kg' | 'lb'): Money {
  const mass = Math.round((unit === 'kg' ? gramsPerKilogram : gramsPerPound) * perGram);
  return { ...price, minor: costOfMass(mass, price.minor, grams * perGram) };
}
