import { gramsPerKilogram, gramsPerPound } from './mass-units';

const gramsPerUnit = { kg: gramsPerKilogram, lb: gramsPerPound } as const;

type WeighedIn = keyof typeof gramsPerUnit;

/** An amount for one kilogram (money, minutes) as the amount for one of a unit of mass: 10 a kg is 4.5359237 a lb. */
export function perMassUnit(perKilogram: number, unit: WeighedIn): number {
  return (perKilogram * gramsPerUnit[unit]) / gramsPerKilogram;
}

/** Grams as kilograms or pounds. */
export function massIn(unit: WeighedIn, grams: number): number {
  return grams / gramsPerUnit[unit];
}
