import { unitSpace } from '@/lib/growing/format-quantity';
import { formatNumber } from './number-text';
import { formatTemperature, type TemperatureUnit } from './temperature-text';
import { formatVolume } from './volume-text';

/** A volume in the reader's unit with its twin: "50.0 L (13.2 gal)". */
export function formatVolumeWithTwin(litres: number, unit: 'litre' | 'gallon', locale: string): string {
  const twin = unit === 'litre' ? 'gallon' : 'litre';
  return `${formatVolume(litres, unit, locale)} (${formatVolume(litres, twin, locale)})`;
}

/** A temperature in the reader's unit with its twin: "20.0 °C (68 °F)". */
export function formatTemperatureWithTwin(celsius: number, unit: TemperatureUnit, locale: string): string {
  const twin = unit === 'celsius' ? 'fahrenheit' : 'celsius';
  return `${formatTemperature(celsius, unit, locale)} (${formatTemperature(celsius, twin, locale)})`;
}

/** A number with up to `most` decimals and none that say nothing: 5, 1.65. */
export function formatUpTo(value: number, locale: string, most: number): string {
  return formatNumber(value, locale, Number.isInteger(Number(value.toFixed(most))) ? 0 : most);
}

/** A number with its unit on one line. */
export function withUnit(text: string, unit: string): string {
  return `${text}${unitSpace}${unit}`;
}
