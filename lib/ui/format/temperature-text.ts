import { celsiusToFahrenheit } from '@/lib/growing/temperature-units';
import { formatNumber } from './number-text';

export type TemperatureUnit = 'celsius' | 'fahrenheit';

/** A temperature in the reader's unit, to a tenth of a degree Celsius or a whole degree Fahrenheit: "71.0 °C". */
export function formatTemperature(celsius: number, unit: TemperatureUnit, locale: string): string {
  return unit === 'celsius'
    ? `${formatNumber(celsius, locale, 1)}\u00a0°C`
    : `${formatNumber(celsiusToFahrenheit(celsius), locale, 0)}\u00a0°F`;
}
