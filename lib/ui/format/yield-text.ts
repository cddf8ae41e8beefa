import type { MassUnit } from '@/lib/database/generated/enums';
import { squareMetresPerSquareFoot } from '@/lib/growing/area-units';
import { gramsPerOunce, gramsPerPound } from '@/lib/growing/mass-units';
import { formatNumber } from './number-text';

/** Pounds per square foot in one kilogram per square metre, exact from both: 1 kg/m² is 0.2048 lb/ft². */
export const poundsPerSquareFoot = (1000 / gramsPerPound) * squareMetresPerSquareFoot;

/** Yield of a bed as the reader measures: "1.25 kg/m²" or "0.26 lb/ft²". */
export function formatBedYield(kgPerSquareMetre: number, mass: MassUnit, locale: string): string {
  return mass === 'kg'
    ? `${formatNumber(kgPerSquareMetre, locale, 2)}\u00a0kg/m²`
    : `${formatNumber(kgPerSquareMetre * poundsPerSquareFoot, locale, 2)}\u00a0lb/ft²`;
}

/** The mass in a yearly yield of logs as the reader weighs: "245 g" or "8.6 oz"; the words around it are the catalogue's. */
export function formatLogMass(grams: number, mass: MassUnit, locale: string): string {
  return mass === 'kg'
    ? `${formatNumber(grams, locale)}\u00a0g`
    : `${formatNumber(grams / gramsPerOunce, locale, 1)}\u00a0oz`;
}
