import type { DecimalSign } from './decimal-reading';
import type { NumberEntry } from './number-entry';
import { readQuantity } from './quantity-entry';

const words = { '%': 'percent', percent: 'percent', pct: 'percent', porciento: 'percent' } as const;

/** Reads a percentage, with or without its sign; whether it is possible (0-100, below 100) is the field's business. */
export function parsePercentEntry(text: string, decimalSign: DecimalSign | null = null): NumberEntry {
  const read = readQuantity<'percent'>(text.replace(/por\s+ciento/i, '%'), {
    words,
    defaultUnit: 'percent',
    decimalSign,
  });
  if (read.kind === 'unreadable') return read;
  const readings = read.readings.flatMap((parts) => parts.map((part) => part.amount));
  const [value] = readings;
  return readings.length === 1 && value !== undefined
    ? { kind: 'number', value }
    : { kind: 'ambiguous', readings };
}
