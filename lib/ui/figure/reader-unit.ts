import type { FigureUnit } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { gramsPerOunce, gramsPerPound } from '@/lib/growing/mass-units';
import { poundsPerSquareFoot } from '../format/yield-text';

/** What a figure is written in: its own unit, or the same in pounds. */
export type WrittenUnit = FigureUnit | 'pounds' | 'pounds-per-square-foot' | 'ounces-per-log-year';

/** A unit as a reader sees it: what the stored value is multiplied by, and how many decimals it has. */
export type ReaderUnit = { readonly unit: WrittenUnit; readonly factor: number; readonly digits: number };

const own: Readonly<Record<FigureUnit, ReaderUnit>> = {
  percent: { unit: 'percent', factor: 1, digits: 1 },
  points: { unit: 'points', factor: 1, digits: 1 },
  kilograms: { unit: 'kilograms', factor: 1, digits: 1 },
  'kilograms-per-square-metre': { unit: 'kilograms-per-square-metre', factor: 1, digits: 2 },
  'grams-per-log-year': { unit: 'grams-per-log-year', factor: 1, digits: 0 },
  people: { unit: 'people', factor: 1, digits: 0 },
  sites: { unit: 'sites', factor: 1, digits: 0 },
};

const inPounds: Readonly<Partial<Record<FigureUnit, ReaderUnit>>> = {
  kilograms: { unit: 'pounds', factor: 1000 / gramsPerPound, digits: 1 },
  'kilograms-per-square-metre': { unit: 'pounds-per-square-foot', factor: poundsPerSquareFoot, digits: 2 },
  'grams-per-log-year': { unit: 'ounces-per-log-year', factor: 1 / gramsPerOunce, digits: 1 },
};

/** How a figure is written for a reader who weighs in kilograms or in pounds; percentages and counts are alike. */
export function readerUnit(unit: FigureUnit, mass: MassUnit): ReaderUnit {
  return (mass === 'lb' ? inPounds[unit] : undefined) ?? own[unit];
}
