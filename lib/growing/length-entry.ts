import type { DecimalSign } from './decimal-reading';
import { millimetresPerFoot, millimetresPerInch } from './length-units';
import { type QuantityPart, readQuantity, type Unreadable } from './quantity-entry';

export type LengthEntryUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

export type LengthEntry =
  | {
      readonly kind: 'length';
      readonly millimetres: number;
      readonly understood: readonly QuantityPart<LengthEntryUnit>[];
      readonly unitTyped: boolean;
    }
  /** Millimetres of each reading. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

const millimetresPer: Readonly<Record<LengthEntryUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: millimetresPerInch,
  ft: millimetresPerFoot,
};

const words: Readonly<Record<string, LengthEntryUnit>> = {
  mm: 'mm',
  cm: 'cm',
  cms: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  metro: 'm',
  metros: 'm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  pulgada: 'in',
  pulgadas: 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  pie: 'ft',
  pies: 'ft',
};

const compounds = [
  { large: 'ft', small: 'in', ratio: 12 },
  { large: 'm', small: 'cm', ratio: 100 },
] as const;

/** Reads a length such as "40 in", "3' 4"", "1 m 2 cm" or "12,7 cm". See `readQuantity` for what is read. */
export function parseLengthEntry(
  text: string,
  defaultUnit: LengthEntryUnit,
  decimalSign: DecimalSign | null = null,
): LengthEntry {
  const read = readQuantity(text, { words, defaultUnit, compounds, decimalSign });
  if (read.kind === 'unreadable') return read;
  const lengths = read.readings.map((parts) =>
    parts.reduce((sum, part) => sum + part.amount * millimetresPer[part.unit], 0),
  );
  const [understood] = read.readings;
  const [value] = lengths;
  const distinct = [...new Set(lengths)];
  return distinct.length === 1 && understood !== undefined && value !== undefined
    ? { kind: 'length', millimetres: value, understood, unitTyped: read.unitTyped }
    : { kind: 'ambiguous', readings: distinct };
}
