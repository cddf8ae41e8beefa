import { z } from 'zod';
import { parseNumberEntry } from '@/lib/growing/number-entry';
import { optionalEntryField, read, wrong } from './entry-field';
import { readNumber } from './number-field';

/** A pH from 0 to 14, to a hundredth, that may be left out; blank is null. */
export const optionalPhField = optionalEntryField(
  (typed) => {
    const number = readNumber(typed, (text, decimalSign) =>
      parseNumberEntry(text, { decimalSign, allowNegative: true }),
    );
    if (number.kind === 'wrong') return number;
    const ph = Number(number.value.toFixed(2));
    return ph >= 0 && ph <= 14 ? read(ph) : wrong('ph-range');
  },
  { json: z.number().min(0).max(14) },
);
