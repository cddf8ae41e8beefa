import { z } from 'zod';
import { parseNumberEntry } from '@/lib/growing/number-entry';
import { entryField, optionalEntryField, type Reader } from './entry-field';
import { readNumber, within } from './number-field';

const most = 2_147_483_647;
const signs = /^[\s\p{Sc}]+|[\s\p{Sc}]+$/gu;

// Which currency it is, and how fine that may be, only the command knows: it turns the amount into minor units.
const readAmount: Reader<number> = (typed) => {
  const bare = typeof typed === 'number' ? typed : { ...typed, text: typed.text.replace(signs, '') };
  const number = readNumber(bare, (text, decimalSign) => parseNumberEntry(text, { decimalSign }));
  return number.kind === 'read' ? within(number.value, { least: 0, most }) : number;
};

const shape = { json: z.number().min(0).max(most) };

/** An amount of money in main units (dollars), 0 or more, as typed; a currency sign beside it is dropped. */
export function moneyField() {
  return entryField(readAmount, shape);
}

/** An amount that may be left out; blank is null, 0 says that it cost nothing. */
export function optionalMoneyField() {
  return optionalEntryField(readAmount, shape);
}
