import { squareMetresToSquareFeet } from '@/lib/growing/area-units';
import { formatMassWithTwin } from '../format/mass-text';
import { formatPercent } from '../format/percent-text';
import { formatTemperatureWithTwin, formatUpTo, formatVolumeWithTwin, withUnit } from '../format/twin-text';
import type { SumReader } from './sum-input';

/** Writes quantities of a sum in the reader's units with their twins. */
export function sumFormat({ locale, massUnit, temperatureUnit, volumeUnit }: SumReader) {
  const squareMetres = (value: number) => withUnit(formatUpTo(value, locale, 2), 'm²');
  const squareFeet = (value: number) =>
    withUnit(formatUpTo(squareMetresToSquareFeet(value), locale, 1), 'ft²');
  return {
    /** Who weighs in pounds measures in feet. */
    area: (value: number) =>
      massUnit === 'kg'
        ? `${squareMetres(value)} (${squareFeet(value)})`
        : `${squareFeet(value)} (${squareMetres(value)})`,
    mass: (grams: number) => formatMassWithTwin(Math.round(grams), massUnit, locale),
    volume: (litres: number) => formatVolumeWithTwin(litres, volumeUnit, locale),
    temperature: (celsius: number) => formatTemperatureWithTwin(celsius, temperatureUnit, locale),
    percent: (percent: number) =>
      formatPercent(percent, locale, Number.isInteger(Number(percent.toFixed(1))) ? 0 : 1),
    number: (value: number, most = 2) => formatUpTo(value, locale, most),
    gramsPerLitre: (value: number) => withUnit(formatUpTo(value, locale, 2), 'g/L'),
    kilowattHours: (value: number) => withUnit(formatUpTo(value, locale, 1), 'kWh'),
  };
}
