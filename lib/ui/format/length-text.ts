import type { MassUnit } from '@/lib/database/generated/enums';
import { squareMetresToSquareFeet } from '@/lib/growing/area-units';
import { millimetresToInches } from '@/lib/growing/length-units';
import { formatNumber } from './number-text';

/** A length as the reader measures, centimetres or (with pounds) inches, one decimal: "12.7 cm" or "5.0 in". */
export function formatLength(millimetres: number, mass: MassUnit, locale: string): string {
  return mass === 'kg'
    ? `${formatNumber(millimetres / 10, locale, 1)}\u00a0cm`
    : `${formatNumber(millimetresToInches(millimetres), locale, 1)}\u00a0in`;
}

/** An area as the reader measures: "1.50 m²" or (with pounds) "16.1 ft²". */
export function formatArea(squareCentimetres: number, mass: MassUnit, locale: string): string {
  const squareMetres = squareCentimetres / 10_000;
  return mass === 'kg'
    ? `${formatNumber(squareMetres, locale, 2)}\u00a0m²`
    : `${formatNumber(squareMetresToSquareFeet(squareMetres), locale, 1)}\u00a0ft²`;
}
