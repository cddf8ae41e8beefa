import type { DecimalSign } from './decimal-reading';
import { numberFormat } from './kept-formats';
import { gramsPerKilogram, gramsPerOunce, gramsPerPound } from './mass-units';

/** Digits are written in Latin numerals everywhere so that printed codes and figures can be compared. */
function numberText(value: number, region: string, least: number, most: number): string {
  return numberFormat(region, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    numberingSystem: 'latn',
  }).format(value);
}

/** U+00A0: keeps a number and its unit on one line. */
export const unitSpace = '\u00a0';

const decimalSigns = new Map<string, DecimalSign>();

/** The decimal sign of a number region such as 'en-US', 'es-ES' or 'es-US'. */
export function decimalSignOf(region: string): DecimalSign {
  const known = decimalSigns.get(region);
  if (known !== undefined) return known;
  const sign = numberText(0.5, region, 1, 1).includes(',') ? ',' : '.';
  decimalSigns.set(region, sign);
  return sign;
}

/** A number of a unit in a region's writing, up to `most` decimals: `12.5 L`. */
export function formatWithUnit(value: number, unit: string, region: string, most: number, least = 0): string {
  return `${numberText(value, region, least, most)}${unitSpace}${unit}`;
}

function formatPounds(grams: number, region: string): string {
  const totalOunces = grams / gramsPerOunce;
  if (Math.abs(totalOunces) < 16) {
    const tenths = Math.round(totalOunces * 10) / 10;
    if (Math.abs(tenths) < 16) return formatWithUnit(tenths, 'oz', region, 1);
  }
  const ounces = Math.round(Math.abs(totalOunces));
  const sign = grams < 0 ? '-' : '';
  const pounds = formatWithUnit(Math.floor(ounces / 16), 'lb', region, 0);
  return `${sign}${pounds}${unitSpace}${formatWithUnit(ounces % 16, 'oz', region, 0)}`;
}

/**
 * A mass in the reader's unit and region. `kg`: from 1 kg on kilograms to the gram, below it grams.
 * `lb`: pounds and whole ounces, below one pound ounces to a tenth. 1360 g is "1.36 kg" and "3 lb 0 oz".
 */
export function formatMass(grams: number, unit: 'kg' | 'lb', region: string): string {
  if (unit === 'lb') return formatPounds(grams, region);
  return Math.abs(grams) >= gramsPerKilogram
    ? formatWithUnit(grams / gramsPerKilogram, 'kg', region, 3)
    : formatWithUnit(grams, 'g', region, 0);
}

/** A number as it is put back into a field: in the region's decimal sign and never grouped, up to `most` decimals. */
export function numberFieldText(value: number, region: string, most: number): string {
  return numberFormat(region, {
    maximumFractionDigits: most,
    useGrouping: false,
    numberingSystem: 'latn',
  }).format(value);
}

/**
 * A mass in whole grams as it is put back into a field for correction, without unit, in the region's decimal sign and
 * never grouped: read back with that sign it is the same mass and asks nothing. Pounds get the fewest decimals that
 * keep the gram: 1361 g is "3".
 */
export function massFieldText(grams: number, unit: 'kg' | 'lb', region: string): string {
  if (unit === 'kg') return numberFieldText(grams / gramsPerKilogram, region, 3);
  const pounds = grams / gramsPerPound;
  const kept = [0, 1, 2, 3].find(
    (decimals) => Math.round(Number(pounds.toFixed(decimals)) * gramsPerPound) === grams,
  );
  return numberFieldText(pounds, region, kept ?? 4);
}

/**
 * The same mass in the reader's unit and its twin, for the echo beside a field ("1.36 kg, that is 3 lb 0 oz"); the
 * words between come from the catalogue.
 */
export function massEcho(
  grams: number,
  unit: 'kg' | 'lb',
  region: string,
): { readonly own: string; readonly twin: string } {
  return {
    own: formatMass(grams, unit, region),
    twin: formatMass(grams, unit === 'kg' ? 'lb' : 'kg', region),
  };
}

/** A large mass in one unit, for totals: `1,250.5 kg` or `2,756.9 lb`, one decimal. */
export function formatTotalMass(grams: number, unit: 'kg' | 'lb', region: string): string {
  const value = unit === 'kg' ? grams / gramsPerKilogram : grams / gramsPerPound;
  return formatWithUnit(value, unit, region, 1, 1);
}
