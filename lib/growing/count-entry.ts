import type { DecimalSign } from './decimal-reading';
import { type NumberEntry, parseNumberEntry } from './number-entry';
import { unreadable } from './quantity-entry';

/**
 * Reads a whole number of 0 or more. A reading with decimals falls away, so "1,250" units is 1250; "1,000" could
 * still be 1 and is asked; "2.5" is "not-whole".
 */
export function parseCountEntry(text: string, decimalSign: DecimalSign | null = null): NumberEntry {
  const entry = parseNumberEntry(text, { decimalSign });
  if (entry.kind === 'unreadable') return entry;
  const readings = (entry.kind === 'number' ? [entry.value] : entry.readings).filter(Number.isSafeInteger);
  const [value] = readings;
  if (value === undefined) return unreadable('not-whole');
  return readings.length === 1 ? { kind: 'number', value } : { kind: 'ambiguous', readings };
}
