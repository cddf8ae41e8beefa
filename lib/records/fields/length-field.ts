import { centimetresToMillimetres, feetToMillimetres, inchesToMillimetres } from '@/lib/growing/length-units';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { type EntryUnit, readInUnit } from './unit-number';

// The first is meant when no unit is given; longer spellings come before the letters they end in.
const units: readonly EntryUnit[] = [
  { name: 'cm', written: /\s*cm\.?$/i, toStored: centimetresToMillimetres },
  { name: 'mm', written: /\s*mm\.?$/i, toStored: (value) => value },
  { name: 'm', written: /\s*m\.?$/i, toStored: (value) => value * 1000 },
  { name: 'in', written: /\s*(in\.?|inch|inches|"|″|pulg\.?|pulgadas?)$/i, toStored: inchesToMillimetres },
  { name: 'ft', written: /\s*(ft\.?|foot|feet|'|′|pies?)$/i, toStored: feetToMillimetres },
];

const longestMillimetres = 100_000;

const readMillimetres: Reader<number> = (typed) => {
  const value = readInUnit(typed, units);
  if (value.kind === 'wrong') return value;
  const millimetres = Math.round(value.value);
  if (millimetres < 1) return wrong('not-positive');
  return millimetres > longestMillimetres ? wrong('too-large', { max: '100 m' }) : read(millimetres);
};

/** A length in whole millimetres, up to 100 m: from `{ text, unit }` with unit cm, mm, m, in or ft. */
export function lengthField() {
  return entryField(readMillimetres);
}

/** A length that may be left out; blank is null. */
export function optionalLengthField() {
  return optionalEntryField(readMillimetres);
}
