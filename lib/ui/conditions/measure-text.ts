import { celsiusToFahrenheit } from '@/lib/growing/temperature-units';
import type { ConditionMeasure } from '@/lib/growing/vocabulary';
import { formatNumber } from '../format/number-text';
import type { TemperatureUnit } from '../format/temperature-text';

/** The unit a measure is shown in. */
export function measureUnit(measure: ConditionMeasure, unit: TemperatureUnit): string {
  if (measure === 'temperature') return unit === 'celsius' ? '°C' : '°F';
  return measure === 'humidity' ? '%' : 'ppm';
}

/** A stored value in the reader's unit. */
export function shownValue(measure: ConditionMeasure, value: number, unit: TemperatureUnit): number {
  return measure === 'temperature' && unit === 'fahrenheit' ? celsiusToFahrenheit(value) : value;
}

/** The value with its unit: "18.5 °C", "92 %", "1,204 ppm". */
export function measureText(
  measure: ConditionMeasure,
  value: number,
  unit: TemperatureUnit,
  locale: string,
): string {
  const digits = measure === 'temperature' && unit === 'celsius' ? 1 : 0;
  return `${formatNumber(shownValue(measure, value, unit), locale, digits)}\u00a0${measureUnit(measure, unit)}`;
}
