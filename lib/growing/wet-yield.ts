import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/**
 * Yield per wet mass: grams of fresh mushrooms per kilogram of moist substrate as filled (definition D3, ATILA16).
 * A tenth of it is what some papers call productivity in percent.
 */
export function yieldPerWetKilogram(freshGrams: number | null, wetGrams: number | null): Answer<number> {
  if (freshGrams === null) return cannotCompute('fresh-mass-missing');
  if (wetGrams === null || wetGrams === 0) return cannotCompute('wet-mass-missing');
  return refuseNegative({ freshGrams, wetGrams }) ?? answer((1000 * freshGrams) / wetGrams);
}

/**
 * BE in percent from a yield in g per kg wet substrate and the dry matter fraction (0-1):
 * BE = yield / fraction / 10. 263.42 g/kg at 0.290 is 90.83 % (ATILA16).
 */
export function beFromWetYield(gramsPerWetKilogram: number, dryMatterFraction: number): Answer<number> {
  const refused = refuseNegative({ gramsPerWetKilogram });
  if (refused) return refused;
  if (!(dryMatterFraction > 0 && dryMatterFraction <= 1)) {
    return cannotCompute('out-of-range', { argument: 'dryMatterFraction', given: String(dryMatterFraction) });
  }
  return answer(gramsPerWetKilogram / dryMatterFraction / 10);
}

/**
 * Dry matter fraction (0-1) that a published productivity and BE imply: productivity % / BE %.
 * 18.42 / 97.58 is 0.1888 (P. florida on grass, Pandey et al.).
 */
export function impliedDryMatterFraction(productivityPercent: number, bePercent: number): Answer<number> {
  const refused = refuseNegative({ productivityPercent, bePercent });
  if (refused) return refused;
  const fraction = productivityPercent / bePercent;
  return fraction > 0 && fraction <= 1
    ? answer(fraction)
    : cannotCompute('out-of-range', { argument: 'impliedDryMatterFraction', given: String(fraction) });
}
