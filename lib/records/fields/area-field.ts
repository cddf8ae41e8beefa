import { z } from 'zod';
import { squareFeetToSquareMetres } from '@/lib/growing/area-units';
import { parseNumberEntry } from '@/lib/growing/number-entry';
import { entryField, optionalEntryField, type Reader, type Reading, read, wrong } from './entry-field';
import { readNumber } from './number-field';

const cm2PerM2 = 10_000;
const largestCm2 = 10_000 * cm2PerM2;

const toSquareMetres = { m2: (value: number) => value, ft2: squareFeetToSquareMetres } as const;
type AreaUnit = keyof typeof toSquareMetres;

// A unit in the text goes before the unit chosen beside it.
const written: readonly { readonly unit: AreaUnit; readonly shape: RegExp }[] = [
  { unit: 'm2', shape: /\s*(m\s?2|m²|sq\.? ?m)$/i },
  { unit: 'ft2', shape: /\s*(ft\.?\s?2|ft²|sq\.? ?ft\.?|pies?\s?2|pies?²)$/i },
];

function limited(squareMetres: number): Reading<number> {
  const cm2 = Math.round(squareMetres * cm2PerM2);
  if (cm2 < 1) return wrong('not-positive');
  return cm2 > largestCm2 ? wrong('too-large', { max: '10000 m²' }) : read(cm2);
}

const readCm2: Reader<number> = (typed) => {
  if (typeof typed === 'number') return limited(typed / cm2PerM2);
  const text = typed.text.trim();
  const inText = written.find(({ shape }) => shape.test(text));
  const unit = inText?.unit ?? typed.unit ?? 'm2';
  if (unit !== 'm2' && unit !== 'ft2') return wrong('unit-unknown');
  const number = readNumber(
    { text: inText ? text.replace(inText.shape, '') : text, unit: null },
    (number, decimalSign) => parseNumberEntry(number, { decimalSign }),
  );
  return number.kind === 'read' ? limited(toSquareMetres[unit](number.value)) : number;
};

const shape = { json: z.int().min(1).max(largestCm2), unit: 'SquareCentimetres' } as const;

/** An area in whole square centimetres, up to a hectare: from `{ text, unit }` with unit m2 or ft2. */
export function areaField() {
  return entryField(readCm2, shape);
}

/** An area that may be left out; blank is null. */
export function optionalAreaField() {
  return optionalEntryField(readCm2, shape);
}
