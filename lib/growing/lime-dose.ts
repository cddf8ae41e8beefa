import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { limeSolubility } from './lime-solubility';
import { saturatedLimePh } from './saturated-lime-ph';
import { litresPerUsCup } from './volume-units';

/**
 * What a lime dose does. `reserveGramsPerLitre` above 0: undissolved lime keeps the bath saturated and its pH at
 * `expectedPh`. Reserve 0 ("no reserve"): the pH is below saturation, falls as lime is used up and is not predicted.
 */
export type LimeDose = {
  readonly gramsPerLitre: number;
  readonly dissolvedGramsPerLitre: number;
  readonly reserveGramsPerLitre: number;
  readonly hasReserve: boolean;
  readonly expectedPh: number | null;
};

/**
 * Dose of hydrated high-calcium lime in a bath at a water temperature (0-50 C). 5 g/L at 20 C: 1.65 g/L dissolves,
 * 3.35 g/L stays as reserve, pH 12.6; 1 g/L at 20 C is below solubility. Lime in grams, water in litres.
 */
export function limeDose(limeGrams: number, waterLitres: number, celsius: number): Answer<LimeDose> {
  const refused = refuseNegative({ limeGrams, waterLitres });
  if (refused) return refused;
  if (waterLitres === 0) return cannotCompute('out-of-range', { argument: 'waterLitres', given: '0' });
  const solubility = limeSolubility(celsius);
  if (solubility.kind !== 'value') return solubility;
  const ph = saturatedLimePh(celsius);
  if (ph.kind !== 'value') return ph;
  const gramsPerLitre = limeGrams / waterLitres;
  const hasReserve = gramsPerLitre > solubility.value;
  return answer({
    gramsPerLitre,
    dissolvedGramsPerLitre: Math.min(gramsPerLitre, solubility.value),
    reserveGramsPerLitre: Math.max(0, gramsPerLitre - solubility.value),
    hasReserve,
    expectedPh: hasReserve ? ph.value : null,
  });
}

/** Grams of lime for a bath: litres x grams per litre. 50 L at 5 g/L (0.5 %, CONTRERAS04) take 250 g. */
export function limeForBath(waterLitres: number, gramsPerLitre: number): Answer<number> {
  return refuseNegative({ waterLitres, gramsPerLitre }) ?? answer(waterLitres * gramsPerLitre);
}

/** Loose bulk density of hydrated lime, grams per litre. Common practice; powders settle, so weigh if you can. */
export const limeBulkGramsPerLitre = 500;

/**
 * Grams of lime in a number of level US cups at a stated bulk density. Half a cup at 500 g/L is 59 g, which in
 * 14-16 US gal is about 1 g/L: below solubility, "no reserve".
 */
export function limeGramsFromCups(
  usCups: number,
  bulkGramsPerLitre: number = limeBulkGramsPerLitre,
): Answer<number> {
  return refuseNegative({ usCups, bulkGramsPerLitre }) ?? answer(usCups * litresPerUsCup * bulkGramsPerLitre);
}
