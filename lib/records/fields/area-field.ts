import { squareFeetToSquareMetres } from '@/lib/growing/area-units';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { type EntryUnit, readInUnit } from './unit-number';

const cm2PerM2 = 10_000;

const units: readonly EntryUnit[] = [
  { name: 'm2', written: /\s*(m2|m²|sq\.? ?m)$/i, toStored: (value) => value * cm2PerM2 },
  {
    name: 'ft2',
    written: /\s*(ft2|ft²|sq\.? ?ft\.?|pies? ?2)$/i,
    toStored: (value) => squareFeetToSquareMetres(value) * cm2PerM2,
  },
];

const largestCm2 = 10_000 * cm2PerM2;

const readCm2: Reader<number> = (typed) => {
  const value = readInUnit(typed, units);
  if (value.kind === 'wrong') return value;
  const cm2 = Math.round(value.value);
  if (cm2 < 1) return wrong('not-positive');
  return cm2 > largestCm2 ? wrong('too-large', { max: '10000 m²' }) : read(cm2);
};

/** An area in whole square centimetres, up to a hectare: from `{ text, unit }` with unit m2 or ft2. */
export function areaField() {
  return entryField(readCm2);
}

/** An area that may be left out; blank is null. */
export function optionalAreaField() {
  return optionalEntryField(readCm2);
}
