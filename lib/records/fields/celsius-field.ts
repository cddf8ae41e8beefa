import { fahrenheitToCelsius } from '@/lib/growing/temperature-units';
import { entryField, optionalEntryField, type Reader, read, wrong } from './entry-field';
import { type EntryUnit, readInUnit } from './unit-number';

const units: readonly EntryUnit[] = [
  { name: 'celsius', written: /\s*(°\s*)?C$/i, toStored: (value) => value },
  { name: 'fahrenheit', written: /\s*(°\s*)?F$/i, toStored: fahrenheitToCelsius },
];

const range = {
  celsius: { min: '-20 °C', max: '130 °C' },
  fahrenheit: { min: '-4 °F', max: '266 °F' },
} as const;

const readCelsius: Reader<number> = (typed) => {
  const value = readInUnit(typed, units);
  if (value.kind === 'wrong') return value;
  const celsius = Number(value.value.toFixed(1));
  if (celsius >= -20 && celsius <= 130) return read(celsius);
  const inFahrenheit =
    typeof typed === 'object' && (typed.unit === 'fahrenheit' || /F$/i.test(typed.text.trim()));
  return wrong('temperature-range', inFahrenheit ? range.fahrenheit : range.celsius);
};

/** A temperature in degrees Celsius to a tenth, -20 to 130: from `{ text, unit }` with unit celsius or fahrenheit. */
export function celsiusField() {
  return entryField(readCelsius);
}

/** A temperature that may be left out; blank is null. */
export function optionalCelsiusField() {
  return optionalEntryField(readCelsius);
}
