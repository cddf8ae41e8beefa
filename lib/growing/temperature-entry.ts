import type { DecimalSign } from './decimal-reading';
import { readQuantity, type Unreadable } from './quantity-entry';
import { fahrenheitToCelsius } from './temperature-units';

export type TemperatureEntryUnit = 'celsius' | 'fahrenheit';

export type TemperatureEntry =
  | {
      readonly kind: 'temperature';
      readonly celsius: number;
      readonly understood: { readonly amount: number; readonly unit: TemperatureEntryUnit };
      readonly unitTyped: boolean;
    }
  /** Degrees Celsius of each reading. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

const words: Readonly<Record<string, TemperatureEntryUnit>> = {
  c: 'celsius',
  '°c': 'celsius',
  oc: 'celsius',
  '°': 'celsius',
  celsius: 'celsius',
  centigrados: 'celsius',
  centígrados: 'celsius',
  f: 'fahrenheit',
  '°f': 'fahrenheit',
  of: 'fahrenheit',
  fahrenheit: 'fahrenheit',
};

/**
 * Reads a temperature, below zero too. "160 F" is 71.1 C whatever the default unit; a bare degree sign means the
 * default unit. Whether a bath can be that warm is the field's business.
 */
export function parseTemperatureEntry(
  text: string,
  defaultUnit: TemperatureEntryUnit,
  decimalSign: DecimalSign | null = null,
): TemperatureEntry {
  const read = readQuantity(text.replace(/[°º]\s+(?=[cf])/gi, '°'), {
    words: { ...words, '°': defaultUnit },
    defaultUnit,
    allowNegative: true,
    decimalSign,
  });
  if (read.kind === 'unreadable') return read;
  const parts = read.readings.flat();
  const celsius = parts.map(({ amount, unit }) =>
    unit === 'fahrenheit' ? fahrenheitToCelsius(amount) : amount,
  );
  const [understood] = parts;
  const [value] = celsius;
  if (celsius.length > 1 || understood === undefined || value === undefined) {
    return { kind: 'ambiguous', readings: celsius };
  }
  return { kind: 'temperature', celsius: value, understood, unitTyped: read.unitTyped };
}
