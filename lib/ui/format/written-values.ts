import type { ReaderUnits } from '@/lib/access/current-units';
import type { FieldError } from '@/lib/base/result';
import { squareMetresToSquareFeet } from '@/lib/growing/area-units';
import { isCalendarDate } from '@/lib/growing/calendar-date';
import { formatMass, formatWithUnit } from '@/lib/growing/format-quantity';
import { millimetresPerFoot } from '@/lib/growing/length-units';
import { formatDate } from './date-text';
import { formatLength } from './length-text';
import { formatTemperature } from './temperature-text';
import { formatVolume } from './volume-text';

type Values = NonNullable<FieldError['values']>;

// A quantity as every command names it: digits with a point, a space, one of these units.
const quantity = /^(-?\d+(?:\.\d+)?) (g|kg|L|cm|m|m²|°C)$/;

function written(number: number, unit: string, units: ReaderUnits, locale: string): string {
  const { massUnit, volumeUnit, temperatureUnit } = units;
  const metric = massUnit === 'kg';
  switch (unit) {
    case 'g':
      return formatMass(number, massUnit, locale);
    case 'kg':
      return formatMass(number * 1000, massUnit, locale);
    case 'L':
      return formatVolume(number, volumeUnit, locale);
    case 'cm':
      return formatLength(number * 10, massUnit, locale);
    case 'm':
      return metric
        ? formatWithUnit(number, 'm', locale, 2)
        : formatWithUnit((number * 1000) / millimetresPerFoot, 'ft', locale, 0);
    case 'm²':
      return metric
        ? formatWithUnit(number, 'm²', locale, 2)
        : formatWithUnit(squareMetresToSquareFeet(number), 'ft²', locale, 0);
    default:
      return formatTemperature(number, temperatureUnit, locale);
  }
}

/** Dates and quantities that a command names, in the reader's writing and units; everything else as it is. */
export function writtenValues(values: Values, units: ReaderUnits, locale: string): Values {
  const entries = Object.entries(values).map(([name, value]) => {
    if (typeof value !== 'string') return [name, value] as const;
    if (isCalendarDate(value)) return [name, formatDate(value, locale)] as const;
    const [, number, unit] = quantity.exec(value) ?? [];
    return number === undefined || unit === undefined
      ? ([name, value] as const)
      : ([name, written(Number(number), unit, units, locale)] as const);
  });
  return Object.fromEntries(entries);
}
