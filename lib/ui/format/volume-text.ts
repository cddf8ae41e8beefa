import { litresToUsGallons } from '@/lib/growing/volume-units';
import { formatNumber } from './number-text';

/** A volume in the reader's unit, one decimal: "56.8 L" or "15.0 gal". */
export function formatVolume(litres: number, unit: 'litre' | 'gallon', locale: string): string {
  return unit === 'litre'
    ? `${formatNumber(litres, locale, 1)}\u00a0L`
    : `${formatNumber(litresToUsGallons(litres), locale, 1)}\u00a0gal`;
}
