import { z } from 'zod';
import type { DecimalSign } from '@/lib/growing/decimal-reading';
import { type NumberEntry, parseNumberEntry } from '@/lib/growing/number-entry';
import {
  entryField,
  optionalEntryField,
  type Reader,
  type Reading,
  read,
  type Typed,
  wrong,
} from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

export type NumberLimits = {
  /** Lowest and highest value allowed, both included. */
  readonly least?: number;
  readonly most?: number;
  /** Decimal places kept. */
  readonly places?: number;
};

/** The number in an entry without a unit; both decimal signs are read, an entry with two readings is asked about. */
export function readNumber(
  typed: Typed,
  parse: (text: string, decimalSign: DecimalSign | null) => NumberEntry,
): Reading<number> {
  if (typeof typed === 'number') return read(typed);
  const entry = parse(typed.text, readerSign());
  if (entry.kind === 'number') return read(entry.value);
  return entry.kind === 'unreadable' ? unreadableCode(entry) : ambiguous(entry.readings, String);
}

/** Refuses a number outside its limits. */
export function within(value: number, { least, most, places = 6 }: NumberLimits): Reading<number> {
  const rounded = Number(value.toFixed(places));
  if (least !== undefined && rounded < least)
    return wrong(least === 0 ? 'negative' : 'too-small', { min: String(least) });
  if (most !== undefined && rounded > most) return wrong('too-large', { max: String(most) });
  return read(rounded);
}

function numberReader(limits: NumberLimits): Reader<number> {
  return (typed) => {
    const number = readNumber(typed, (text, decimalSign) =>
      parseNumberEntry(text, { decimalSign, allowNegative: (limits.least ?? -1) < 0 }),
    );
    return number.kind === 'read' ? within(number.value, limits) : number;
  };
}

function numberShape({ least, most }: NumberLimits) {
  const above = least === undefined ? z.number() : z.number().min(least);
  return { json: most === undefined ? above : above.max(most) };
}

/** A number that must be given. */
export function numberField(limits: NumberLimits = {}) {
  return entryField(numberReader(limits), numberShape(limits));
}

/** A number that may be left out; blank is null. */
export function optionalNumberField(limits: NumberLimits = {}) {
  return optionalEntryField(numberReader(limits), numberShape(limits));
}
