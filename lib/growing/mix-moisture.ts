import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, type WetBasisPercent } from './moisture-basis';

/**
 * Moisture and dry mass of a mix of substrates, each with its own wet mass (grams) and wet-basis moisture.
 * The mix's moisture is the water in all parts over the mass of all parts, not the mean of the moistures.
 */
export function mixMoisture(
  parts: readonly { readonly wetGrams: number; readonly moisture: WetBasisPercent }[],
): Answer<{
  readonly wetGrams: number;
  readonly dryGrams: number;
  readonly moistureWetPercent: WetBasisPercent;
}> {
  let wetGrams = 0;
  let dryGrams = 0;
  for (const part of parts) {
    const refused = refuseNegative({ wetGrams: part.wetGrams });
    if (refused) return refused;
    wetGrams += part.wetGrams;
    dryGrams += part.wetGrams * dryMatterFraction(part.moisture);
  }
  if (wetGrams === 0) return cannotCompute('no-components');
  return answer({
    wetGrams,
    dryGrams,
    moistureWetPercent: ((100 * (wetGrams - dryGrams)) / wetGrams) as WetBasisPercent,
  });
}
