import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, type WetBasisPercent } from './moisture-basis';

/** Specific heats, kilojoules per kilogram and kelvin. Water 4.186 (15 C); dry straw 1.4 is common practice. */
export const waterSpecificHeat = 4.186;
export const dryStrawSpecificHeat = 1.4;

export type FuelKind = 'propane' | 'natural_gas' | 'firewood' | 'electricity';

/**
 * Heat in a fuel (lower heating value) and the share of it that a simple set-up brings into the bath. From memory,
 * common practice; a network should put in its own efficiency.
 */
export const fuels: Readonly<
  Record<
    FuelKind,
    { readonly unit: 'kg' | 'm3' | 'kWh'; readonly kilowattHoursPerUnit: number; readonly efficiency: number }
  >
> = {
  propane: { unit: 'kg', kilowattHoursPerUnit: 12.87, efficiency: 0.45 },
  natural_gas: { unit: 'm3', kilowattHoursPerUnit: 10, efficiency: 0.45 },
  firewood: { unit: 'kg', kilowattHoursPerUnit: 4, efficiency: 0.2 },
  electricity: { unit: 'kWh', kilowattHoursPerUnit: 1, efficiency: 0.9 },
};

export type BathHeat = {
  /** Heat that water and load take up, kilowatt-hours. */
  readonly heatKilowattHours: number;
  /** Fuel energy needed at the efficiency, kilowatt-hours. */
  readonly fuelKilowattHours: number;
  /** The same in the unit the fuel is bought in. */
  readonly fuelAmount: number;
  readonly fuelUnit: 'kg' | 'm3' | 'kWh';
  readonly efficiency: number;
};

/**
 * Heat to bring a bath from start to target, water and load together; holding it there takes more, which the
 * efficiency has to cover. Masses in grams and litres (1 L water = 1 kg), temperatures in degrees Celsius.
 * 100 L from 15 to 75 C with 10 kg straw at 12 %: 7.3 kWh.
 */
export function bathHeat(bath: {
  readonly waterLitres: number;
  readonly loadWetGrams: number;
  readonly loadMoisture: WetBasisPercent;
  readonly startCelsius: number;
  readonly targetCelsius: number;
  readonly fuel: FuelKind;
  readonly efficiency?: number;
}): Answer<BathHeat> {
  const { waterLitres, loadWetGrams, startCelsius, targetCelsius, fuel } = bath;
  const refused = refuseNegative({ waterLitres, loadWetGrams });
  if (refused) return refused;
  const rise = targetCelsius - startCelsius;
  if (!(rise >= 0 && targetCelsius <= 100)) {
    return cannotCompute('out-of-range', { argument: 'targetCelsius', given: String(targetCelsius) });
  }
  const { unit, kilowattHoursPerUnit, efficiency: usual } = fuels[fuel];
  const efficiency = bath.efficiency ?? usual;
  if (!(efficiency > 0 && efficiency <= 1)) {
    return cannotCompute('out-of-range', { argument: 'efficiency', given: String(efficiency) });
  }
  const loadKilograms = loadWetGrams / 1000;
  const dryKilograms = loadKilograms * dryMatterFraction(bath.loadMoisture);
  const waterKilograms = waterLitres + loadKilograms - dryKilograms;
  const kilojoules = (waterKilograms * waterSpecificHeat + dryKilograms * dryStrawSpecificHeat) * rise;
  const heatKilowattHours = kilojoules / 3600;
  const fuelKilowattHours = heatKilowattHours / efficiency;
  return answer({
    heatKilowattHours,
    fuelKilowattHours,
    fuelAmount: fuelKilowattHours / kilowattHoursPerUnit,
    fuelUnit: unit,
    efficiency,
  });
}
