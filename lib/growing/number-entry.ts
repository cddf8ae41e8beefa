import type { DecimalSign } from './decimal-reading';
import { readQuantity, type Unreadable } from './quantity-entry';

export type NumberEntry =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

export type NumberEntryOptions = {
  /** The reader's own decimal sign, if it should settle "1,250". */
  readonly decimalSign?: DecimalSign | null;
  readonly allowNegative?: boolean;
};

const words = { ph: 'one', x: 'one' } as const;

/** Reads a plain decimal number; "pH 12.4" is 12.4. "1,250" has two readings and is asked. */
export function parseNumberEntry(text: string, options: NumberEntryOptions = {}): NumberEntry {
  const read = readQuantity<'one'>(text, { words, defaultUnit: 'one', ...options });
  if (read.kind === 'unreadable') return read;
  const readings = read.readings.flatMap((parts) => parts.map((part) => part.amount));
  const [value] = readings;
  return readings.length === 1 && value !== undefined
    ? { kind: 'number', value }
    : { kind: 'ambiguous', readings };
}
