import { type Answer, answer, cannotCompute } from './answer';
import { findLogWood, type LogWood } from './log-wood';

/** Which parts of the log count: the wood alone, or wood with its bark (the default: mycelium uses both). */
export type LogPart = 'wood' | 'wood_and_bark';

const gramsPerCubicMetreOfWater = 1_000_000;

function fractions(wood: LogWood): { readonly woodPart: number; readonly barkPart: number } {
  const whole = 100 + wood.barkVolumePercent;
  return { woodPart: 100 / whole, barkPart: wood.barkVolumePercent / whole };
}

/** Oven-dry density of a log relative to water. `wood`: the whole volume counted as wood. Source: FIA. */
export function logDryDensity(wood: LogWood, part: LogPart): number {
  if (part === 'wood') return wood.woodSpecificGravity;
  const { woodPart, barkPart } = fractions(wood);
  return woodPart * wood.woodSpecificGravity + barkPart * wood.barkSpecificGravity;
}

/** Green density of a log with bark relative to water: each part with its own moisture (dry basis). Source: FIA. */
export function logGreenDensity(wood: LogWood): number {
  const { woodPart, barkPart } = fractions(wood);
  return (
    woodPart * wood.woodSpecificGravity * (1 + wood.woodMoistureDryPercent / 100) +
    barkPart * wood.barkSpecificGravity * (1 + wood.barkMoistureDryPercent / 100)
  );
}

/**
 * Oven-dry grams of a log of known volume: volume x specific gravity x 1000 kg/m3.
 * White oak, 12.7 cm x 101.6 cm outside bark: 7.651 kg with bark, 7.722 kg counted as wood only.
 */
export function logDryGramsFromVolume(
  fiaCode: number,
  cubicMetres: number,
  part: LogPart = 'wood_and_bark',
): Answer<number> {
  const wood = findLogWood(fiaCode);
  if (!wood) return cannotCompute('log-wood-unknown', { fiaCode });
  if (!(cubicMetres > 0 && cubicMetres < Number.POSITIVE_INFINITY)) {
    return cannotCompute('log-size-missing', { cubicMetres: String(cubicMetres) });
  }
  return answer(cubicMetres * gramsPerCubicMetreOfWater * logDryDensity(wood, part));
}

/**
 * Oven-dry grams of a fresh log of known green mass, wood with bark: green / (green/dry ratio).
 * 13.079 kg of green white oak is 7.651 kg dry. Only for logs weighed soon after felling.
 */
export function logDryGramsFromGreen(fiaCode: number, greenGrams: number): Answer<number> {
  const wood = findLogWood(fiaCode);
  if (!wood) return cannotCompute('log-wood-unknown', { fiaCode });
  if (!(greenGrams > 0 && greenGrams < Number.POSITIVE_INFINITY)) {
    return cannotCompute('wet-mass-missing', { greenGrams: String(greenGrams) });
  }
  return answer(greenGrams / wood.greenToDryRatio);
}
