import type { DecimalSign } from './decimal-reading';
import { readQuantity, type Unreadable } from './quantity-entry';

export type DurationEntryUnit = 'min' | 'h';

export type DurationEntry =
  | { readonly kind: 'duration'; readonly minutes: number }
  /** Minutes of each reading. */
  | { readonly kind: 'ambiguous'; readonly readings: readonly number[] }
  | Unreadable;

const words: Readonly<Record<string, DurationEntryUnit>> = {
  ...{ min: 'min', mins: 'min', minute: 'min', minutes: 'min', minuto: 'min', minutos: 'min', "'": 'min' },
  ...{ h: 'h', hr: 'h', hrs: 'h', hs: 'h', hour: 'h', hours: 'h', hora: 'h', horas: 'h' },
};

const compounds = [{ large: 'h', small: 'min', ratio: 60 }] as const;

/** Reads how long something took, such as "90", "1.5 h", "1 h 30 min" or "1:30", which are hours and minutes. */
export function parseDurationEntry(
  text: string,
  defaultUnit: DurationEntryUnit,
  decimalSign: DecimalSign | null = null,
): DurationEntry {
  const clock = text.trim().replace(/^(\d{1,3}):([0-5]\d)(?::[0-5]\d)?$/, '$1 h $2 min');
  const read = readQuantity(clock, { words, defaultUnit, compounds, decimalSign });
  if (read.kind === 'unreadable') return read;
  const minutes = read.readings.map((parts) =>
    parts.reduce((sum, { amount, unit }) => sum + amount * (unit === 'h' ? 60 : 1), 0),
  );
  const distinct = [...new Set(minutes)];
  const [only] = distinct;
  return distinct.length === 1 && only !== undefined
    ? { kind: 'duration', minutes: only }
    : { kind: 'ambiguous', readings: distinct };
}
