import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, type WetBasisPercent } from './moisture-basis';

/**
 * Water to bring a material from its moisture to a target, both wet basis.
 * The dry mass stays: water = wet x (1 - from) / (1 - to) - wet. Grams of water are millilitres.
 * 10 kg straw at 12 % to 70 % takes 19.33 kg. A material already wetter answers by how many grams it is too wet.
 */
export function waterToAdd(
  wetGrams: number,
  from: WetBasisPercent,
  target: WetBasisPercent,
): Answer<{ readonly waterGrams: number; readonly finalGrams: number; readonly dryGrams: number }> {
  const refused = refuseNegative({ wetGrams });
  if (refused) return refused;
  const dryGrams = wetGrams * dryMatterFraction(from);
  const finalGrams = dryGrams / dryMatterFraction(target);
  if (from > target) {
    return cannotCompute('already-wetter', { excessGrams: wetGrams - finalGrams, from, target });
  }
  return answer({ waterGrams: finalGrams - wetGrams, finalGrams, dryGrams });
}
