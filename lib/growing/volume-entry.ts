import type { DecimalSign } from './decimal-reading';
import { type QuantityPart, readQuantity, type Unreadable } from './quantity-entry';
import { litresPerUsCup, litresPerUsGallon } from './volume-units';

export type VolumeEntryUnit = 'L' | 'mL' | 'gal' | 'qt' | 'cup';

export type VolumeEntry =
  | {
      readonly kind: 'volume';
      readonly litres: number;
      readonly understood: readonly QuantityPart<VolumeEntryUnit>[];
      readonly unitTyped: boolean;
    }
  /** Litres of each reading. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

const litresPer: Readonly<Record<VolumeEntryUnit, number>> = {
  L: 1,
  mL: 0.001,
  gal: litresPerUsGallon,
  qt: litresPerUsGallon / 4,
  cup: litresPerUsCup,
};

const words: Readonly<Record<string, VolumeEntryUnit>> = {
  l: 'L',
  lt: 'L',
  lts: 'L',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  litro: 'L',
  litros: 'L',
  ml: 'mL',
  millilitres: 'mL',
  milliliters: 'mL',
  mililitros: 'mL',
  gal: 'gal',
  gals: 'gal',
  gallon: 'gal',
  gallons: 'gal',
  galon: 'gal',
  galón: 'gal',
  galones: 'gal',
  qt: 'qt',
  qts: 'qt',
  quart: 'qt',
  quarts: 'qt',
  cup: 'cup',
  cups: 'cup',
  taza: 'cup',
  tazas: 'cup',
};

const compounds = [
  { large: 'gal', small: 'qt', ratio: 4 },
  { large: 'L', small: 'mL', ratio: 1000 },
] as const;

/** Reads a volume; gallons, quarts and cups are US liquid measure. See `readQuantity` for what is read. */
export function parseVolumeEntry(
  text: string,
  defaultUnit: VolumeEntryUnit,
  decimalSign: DecimalSign | null = null,
): VolumeEntry {
  const read = readQuantity(text, { words, defaultUnit, compounds, decimalSign });
  if (read.kind === 'unreadable') return read;
  const litres = read.readings.map((parts) =>
    parts.reduce((sum, part) => sum + part.amount * litresPer[part.unit], 0),
  );
  const [understood] = read.readings;
  const [value] = litres;
  const distinct = [...new Set(litres)];
  return distinct.length === 1 && understood !== undefined && value !== undefined
    ? { kind: 'volume', litres: value, understood, unitTyped: read.unitTyped }
    : { kind: 'ambiguous', readings: distinct };
}
