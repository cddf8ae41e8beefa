import { z } from 'zod';
import { type LengthEntryUnit, parseLengthEntry } from '@/lib/growing/length-entry';
import { entryField, optionalEntryField, type Reader, type Reading, read, wrong } from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

const units = ['cm', 'mm', 'm', 'in', 'ft'] as const satisfies readonly LengthEntryUnit[];
const longestMillimetres = 100_000;

function limited(exact: number): Reading<number> {
  const millimetres = Math.round(exact);
  if (millimetres < 1) return wrong('not-positive');
  return millimetres > longestMillimetres ? wrong('too-large', { max: '100 m' }) : read(millimetres);
}

const readMillimetres: Reader<number> = (typed) => {
  if (typeof typed === 'number') return limited(typed);
  const unit = typed.unit === null ? 'cm' : units.find((one) => one === typed.unit);
  if (unit === undefined) return wrong('unit-unknown');
  const entry = parseLengthEntry(typed.text, unit, readerSign());
  if (entry.kind === 'unreadable') return unreadableCode(entry);
  if (entry.kind === 'ambiguous')
    return ambiguous(entry.readings, (value) => `${Number((value / 10).toFixed(1))} cm`);
  return limited(entry.millimetres);
};

const shape = { json: z.int().min(1).max(longestMillimetres), unit: 'Millimetres' } as const;

/** A length in whole millimetres, up to 100 m: from `{ text, unit }` with unit cm, mm, m, in or ft. */
export function lengthField() {
  return entryField(readMillimetres, shape);
}

/** A length that may be left out; blank is null. */
export function optionalLengthField() {
  return optionalEntryField(readMillimetres, shape);
}
