import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, type WetBasisPercent } from './moisture-basis';

declare const ofWet: unique symbol;
declare const ofDry: unique symbol;

/** Spawn as percent of the wet substrate mass. Rates on different bases must not be compared. */
export type SpawnPercentOfWet = number & { readonly [ofWet]: true };

/** Spawn as percent of the dry substrate mass. */
export type SpawnPercentOfDry = number & { readonly [ofDry]: true };

function rate(spawnGrams: number | null, substrateGrams: number | null): Answer<number> {
  if (spawnGrams === null) return cannotCompute('spawn-missing');
  if (substrateGrams === null || substrateGrams === 0) return cannotCompute('substrate-missing');
  return refuseNegative({ spawnGrams, substrateGrams }) ?? answer((100 * spawnGrams) / substrateGrams);
}

/** Spawn rate on the wet substrate: 60 g per 1000 g is 6 % (ARGAW23), 50 g per 1000 g is 5 % (ADJAPONG15). */
export function spawnPercentOfWet(
  spawnGrams: number | null,
  wetGrams: number | null,
): Answer<SpawnPercentOfWet> {
  return rate(spawnGrams, wetGrams) as Answer<SpawnPercentOfWet>;
}

/** Spawn rate on the dry substrate. */
export function spawnPercentOfDry(
  spawnGrams: number | null,
  dryGrams: number | null,
): Answer<SpawnPercentOfDry> {
  return rate(spawnGrams, dryGrams) as Answer<SpawnPercentOfDry>;
}

/** Wet rate to dry rate: rate / dry matter fraction. 5 % of wet at 70 % moisture is 16.67 % of dry. */
export function spawnWetToDry(percent: SpawnPercentOfWet, moisture: WetBasisPercent): SpawnPercentOfDry {
  return (percent / dryMatterFraction(moisture)) as SpawnPercentOfDry;
}

/** Dry rate to wet rate: rate x dry matter fraction. 10 % of dry at 75 % moisture is 2.5 % of wet. */
export function spawnDryToWet(percent: SpawnPercentOfDry, moisture: WetBasisPercent): SpawnPercentOfWet {
  return (percent * dryMatterFraction(moisture)) as SpawnPercentOfWet;
}

/**
 * Spawn needed, grams: units x wet substrate per unit x rate. 20 bags of 2.5 kg at 4 % of wet need 2 kg.
 * With what is left of a lot it also answers whether that is enough.
 */
export function spawnNeeded(
  units: number,
  wetGramsPerUnit: number,
  percentOfWet: number,
  lotGramsLeft: number | null = null,
): Answer<{ readonly spawnGrams: number; readonly shortfallGrams: number | null }> {
  const refused = refuseNegative({ units, wetGramsPerUnit, percentOfWet });
  if (refused) return refused;
  const spawnGrams = (units * wetGramsPerUnit * percentOfWet) / 100;
  const shortfallGrams = lotGramsLeft === null ? null : Math.max(0, spawnGrams - lotGramsLeft);
  return answer({ spawnGrams, shortfallGrams });
}
