import { z } from 'zod';
import { parseCountEntry } from '@/lib/growing/count-entry';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { readNumber } from './number-field';

export type CountLimits = { readonly least?: number; readonly most?: number };

function countReader({ least = 1, most = 100_000 }: CountLimits): Reader<number> {
  return (typed) => {
    const number = readNumber(typed, parseCountEntry);
    if (number.kind === 'wrong') return number;
    if (!Number.isInteger(number.value)) return wrong('not-whole');
    if (number.value < least)
      return least === 1 ? wrong('no-units') : wrong('too-small', { min: String(least) });
    if (number.value > most) return wrong('too-large', { max: String(most) });
    return read(number.value);
  };
}

function countShape({ least = 1, most = 100_000 }: CountLimits) {
  return { json: z.int().min(least).max(most) };
}

/** A whole number of things, 1 to 100,000 unless said otherwise. */
export function countField(limits: CountLimits = {}) {
  return entryField(countReader(limits), countShape(limits));
}

/** A whole number of things that may be left out; blank is null. */
export function optionalCountField(limits: CountLimits = {}) {
  return optionalEntryField(countReader(limits), countShape(limits));
}
