import type { ConditionMeasure } from './vocabulary';

/**
 * Values that a place can have at all: degrees Celsius, percent relative humidity, parts per million of carbon dioxide.
 * Beyond them a column was read wrongly or a sensor is broken. Common practice with a wide margin.
 */
export const conditionLimits: Readonly<
  Record<ConditionMeasure, { readonly least: number; readonly most: number }>
> = {
  temperature: { least: -40, most: 80 },
  humidity: { least: 0, most: 100 },
  carbon_dioxide: { least: 0, most: 50_000 },
};
