import type { DecimalSign } from './decimal-reading';
import { gramsPerKilogram, gramsPerOunce, gramsPerPound } from './mass-units';
import { type QuantityPart, readQuantity, type Unreadable, unreadable } from './quantity-entry';

export const massEntryUnits = ['kg', 'g', 'lb', 'oz'] as const;
export type MassEntryUnit = (typeof massEntryUnits)[number];

export type MassEntry =
  | {
      readonly kind: 'mass';
      /** Whole grams, half a gram rounded up. */
      readonly grams: number;
      readonly understood: readonly QuantityPart<MassEntryUnit>[];
      /** False when the default unit was taken. */
      readonly unitTyped: boolean;
    }
  /** Grams of each reading, not rounded, so that the question can show them; ask, never pick. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

const gramsPer: Readonly<Record<MassEntryUnit, number>> = {
  kg: gramsPerKilogram,
  g: 1,
  lb: gramsPerPound,
  oz: gramsPerOunce,
};

const words: Readonly<Record<string, MassEntryUnit>> = {
  kg: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  kilogramo: 'kg',
  kilogramos: 'kg',
  g: 'g',
  gr: 'g',
  grs: 'g',
  gm: 'g',
  gms: 'g',
  gram: 'g',
  grams: 'g',
  gramo: 'g',
  gramos: 'g',
  lb: 'lb',
  lbs: 'lb',
  '#': 'lb',
  pound: 'lb',
  pounds: 'lb',
  libra: 'lb',
  libras: 'lb',
  oz: 'oz',
  ozs: 'oz',
  ounce: 'oz',
  ounces: 'oz',
  onza: 'oz',
  onzas: 'oz',
};

const compounds = [
  { large: 'lb', small: 'oz', ratio: 16 },
  { large: 'kg', small: 'g', ratio: 1000 },
] as const;

/** Largest mass a record can hold, grams. */
const mostGrams = 2_000_000_000;

/**
 * Reads a mass as typed, pasted or sent by a scale that types like a keyboard; see `readQuantity` for what is read.
 * "2 lb 3 oz" is 992 g, "1,25 kg" is 1250 g; "1,250 kg" has two readings (1.25 and 1250 kg) unless `decimalSign`,
 * the reader's own, settles it. A mass above 0 that rounds to 0 g is unreadable ("too-small"). 0 is read as 0.
 */
export function parseMassEntry(
  text: string,
  defaultUnit: MassEntryUnit,
  decimalSign: DecimalSign | null = null,
): MassEntry {
  const read = readQuantity(text, { words, defaultUnit, compounds, decimalSign });
  if (read.kind === 'unreadable') return read;
  const grams = read.readings.map((parts) =>
    parts.reduce((sum, part) => sum + part.amount * gramsPer[part.unit], 0),
  );
  if (grams.some((mass) => mass > mostGrams)) {
    return unreadable('too-large');
  }
  const [understood] = read.readings;
  const [exact] = grams;
  // "0 kg 0" has two readings that are the same mass; there is nothing to ask.
  const distinct = [...new Set(grams)];
  if (distinct.length > 1 || understood === undefined || exact === undefined) {
    return { kind: 'ambiguous', readings: distinct };
  }
  const whole = Math.round(Number(exact.toFixed(6)));
  if (whole === 0 && exact > 0) return unreadable('too-small');
  return { kind: 'mass', grams: whole, understood, unitTyped: read.unitTyped };
}
