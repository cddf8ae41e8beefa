import { z } from 'zod';
import { parseTemperatureEntry } from '@/lib/growing/temperature-entry';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

const range = {
  celsius: { min: '-20 °C', max: '130 °C' },
  fahrenheit: { min: '-4 °F', max: '266 °F' },
} as const;

function limited(celsius: number, unit: keyof typeof range) {
  const tenth = Number(celsius.toFixed(1));
  return tenth >= -20 && tenth <= 130 ? read(tenth) : wrong('temperature-range', range[unit]);
}

const readCelsius: Reader<number> = (typed) => {
  if (typeof typed === 'number') return limited(typed, 'celsius');
  const unit = typed.unit ?? 'celsius';
  if (unit !== 'celsius' && unit !== 'fahrenheit') return wrong('unit-unknown');
  const entry = parseTemperatureEntry(typed.text, unit, readerSign());
  if (entry.kind === 'unreadable') return unreadableCode(entry);
  if (entry.kind === 'ambiguous') return ambiguous(entry.readings, (value) => `${value.toFixed(1)} °C`);
  return limited(entry.celsius, entry.understood.unit);
};

const shape = { json: z.number().min(-20).max(130) };

/** A temperature in degrees Celsius to a tenth, -20 to 130: from `{ text, unit }` with unit celsius or fahrenheit. */
export function celsiusField() {
  return entryField(readCelsius, shape);
}

/** A temperature that may be left out; blank is null. */
export function optionalCelsiusField() {
  return optionalEntryField(readCelsius, shape);
}
