import { squareFeetToSquareMetres } from '@/lib/growing/area-units';
import { parseCountEntry } from '@/lib/growing/count-entry';
import { decimalSignOf } from '@/lib/growing/format-quantity';
import { type LengthEntryUnit, parseLengthEntry } from '@/lib/growing/length-entry';
import { massEntryUnits, parseMassEntry } from '@/lib/growing/mass-entry';
import { type NumberEntry, parseNumberEntry } from '@/lib/growing/number-entry';
import { parsePercentEntry } from '@/lib/growing/percent-entry';
import { parseTemperatureEntry } from '@/lib/growing/temperature-entry';
import { parseVolumeEntry, type VolumeEntryUnit } from '@/lib/growing/volume-entry';
import type { SumInput } from './sum-input';

const volumeEntryUnits = ['L', 'mL', 'gal', 'qt', 'cup'] as const satisfies readonly VolumeEntryUnit[];
const lengthEntryUnits = ['mm', 'cm', 'm', 'in', 'ft'] as const satisfies readonly LengthEntryUnit[];

/**
 * Reads the boxes of a form for its sums, by the parsers that the server reads them with. What is empty is null; what
 * cannot be read, or can be read in two ways, is null too and counted in `unclear`.
 */
export function readEntries({ values, reader }: Pick<SumInput, 'values' | 'reader'>) {
  const sign = decimalSignOf(reader.locale);
  let unclear = 0;
  const text = (name: string): string => {
    const value = values[name];
    return (typeof value === 'string' ? value : (value?.[0] ?? '')).trim();
  };
  const unitOf = <U extends string>(name: string, units: readonly U[], usual: U): U =>
    units.find((unit) => unit === text(`${name}__unit`)) ?? usual;
  const known = (name: string, read: (typed: string) => number | null): number | null => {
    const typed = text(name);
    if (typed === '') return null;
    const value = read(typed);
    if (value === null) unclear += 1;
    return value;
  };
  const plain = (entry: NumberEntry): number | null => (entry.kind === 'number' ? entry.value : null);
  return {
    text,
    unclear: () => unclear,
    /** Grams. */
    mass: (name: string) =>
      known(name, (typed) => {
        const entry = parseMassEntry(typed, unitOf(name, massEntryUnits, reader.massUnit), sign);
        return entry.kind === 'mass' ? entry.grams : null;
      }),
    /** Litres. */
    volume: (name: string) =>
      known(name, (typed) => {
        const usual = reader.volumeUnit === 'litre' ? 'L' : 'gal';
        const entry = parseVolumeEntry(typed, unitOf(name, volumeEntryUnits, usual), sign);
        return entry.kind === 'volume' ? entry.litres : null;
      }),
    celsius: (name: string) =>
      known(name, (typed) => {
        const unit = unitOf(name, ['celsius', 'fahrenheit'], reader.temperatureUnit);
        const entry = parseTemperatureEntry(typed, unit, sign);
        return entry.kind === 'temperature' ? entry.celsius : null;
      }),
    millimetres: (name: string) =>
      known(name, (typed) => {
        const usual = reader.massUnit === 'kg' ? 'cm' : 'in';
        const entry = parseLengthEntry(typed, unitOf(name, lengthEntryUnits, usual), sign);
        return entry.kind === 'length' ? entry.millimetres : null;
      }),
    squareMetres: (name: string) =>
      known(name, (typed) => {
        const value = plain(parseNumberEntry(typed, { decimalSign: sign }));
        const inFeet = unitOf(name, ['m2', 'ft2'], reader.massUnit === 'kg' ? 'm2' : 'ft2') === 'ft2';
        return value === null || !inFeet ? value : squareFeetToSquareMetres(value);
      }),
    percent: (name: string) => known(name, (typed) => plain(parsePercentEntry(typed, sign))),
    count: (name: string) => known(name, (typed) => plain(parseCountEntry(typed, sign))),
    number: (name: string) => known(name, (typed) => plain(parseNumberEntry(typed, { decimalSign: sign }))),
  };
}

export type Entries = ReturnType<typeof readEntries>;
