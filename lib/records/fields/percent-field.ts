import { z } from 'zod';
import { parsePercentEntry } from '@/lib/growing/percent-entry';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { readNumber } from './number-field';

function percentReader(hundred: 'allowed' | 'moisture-hundred'): Reader<number> {
  return (typed) => {
    const number = readNumber(typed, parsePercentEntry);
    if (number.kind === 'wrong') return number;
    const percent = Number(number.value.toFixed(2));
    if (percent < 0 || percent > 100) return wrong('percent-range');
    if (percent === 100 && hundred !== 'allowed') return wrong(hundred);
    return read(percent);
  };
}

const percentShape = { json: z.number().min(0).max(100) };
const moistureShape = { json: z.number().min(0).lt(100) };

/** A percentage from 0 to 100, to a hundredth. */
export function percentField() {
  return entryField(percentReader('allowed'), percentShape);
}

/** A percentage that may be left out; blank is null. */
export function optionalPercentField() {
  return optionalEntryField(percentReader('allowed'), percentShape);
}

/** Moisture, percent of the wet mass, 0 up to but not 100. */
export function moistureField() {
  return entryField(percentReader('moisture-hundred'), moistureShape);
}

/** Moisture that may be left out; blank is null. */
export function optionalMoistureField() {
  return optionalEntryField(percentReader('moisture-hundred'), moistureShape);
}
