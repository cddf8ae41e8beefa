import { readerLocale } from '@/lib/base/reader-locale';
import type { TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { squareMetresToSquareFeet } from '@/lib/growing/area-units';
import { numberFieldText } from '@/lib/growing/format-quantity';
import { millimetresToInches } from '@/lib/growing/length-units';
import { celsiusToFahrenheit } from '@/lib/growing/temperature-units';
import { litresToUsGallons } from '@/lib/growing/volume-units';
import type { MassReader } from './mass-units';

type Values = Record<string, string>;
export type MeasureReader = MassReader & {
  readonly temperatureUnit: TemperatureUnit;
  readonly volumeUnit: VolumeUnit;
};

function placed(name: string, value: number, unit: string, reader: MassReader, most: number): Values {
  return { [name]: numberFieldText(value, readerLocale(reader), most), [`${name}__unit`]: unit };
}

/** What a length field holds for stored millimetres: the reader's unit, fine enough to be read back the same. */
export function lengthValues(name: string, millimetres: number | null, reader: MassReader): Values {
  if (millimetres === null) return {};
  return reader.massUnit === 'kg'
    ? placed(name, millimetres / 10, 'cm', reader, 1)
    : placed(name, millimetresToInches(millimetres), 'in', reader, 2);
}

/** The same for an area of stored square centimetres. */
export function areaValues(name: string, squareCentimetres: number | null, reader: MassReader): Values {
  if (squareCentimetres === null) return {};
  const squareMetres = squareCentimetres / 10_000;
  return reader.massUnit === 'kg'
    ? placed(name, squareMetres, 'm2', reader, 4)
    : placed(name, squareMetresToSquareFeet(squareMetres), 'ft2', reader, 3);
}

/** The same for a volume of stored millilitres. */
export function volumeValues(name: string, millilitres: number | null, reader: MeasureReader): Values {
  if (millilitres === null) return {};
  return reader.volumeUnit === 'litre'
    ? placed(name, millilitres / 1000, 'L', reader, 3)
    : placed(name, litresToUsGallons(millilitres / 1000), 'gal', reader, 4);
}

/** The same for a temperature of stored degrees Celsius. */
export function celsiusValues(name: string, celsius: number | null, reader: MeasureReader): Values {
  if (celsius === null) return {};
  return reader.temperatureUnit === 'celsius'
    ? placed(name, celsius, 'celsius', reader, 2)
    : placed(name, celsiusToFahrenheit(celsius), 'fahrenheit', reader, 2);
}
