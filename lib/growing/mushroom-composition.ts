import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/** Composition per 100 g fresh. Source: USDA food composition table, SR release, per 100 g raw. */
export type Composition = {
  readonly ndbNumber: number;
  readonly waterGrams: number;
  readonly proteinGrams: number;
};

/** By species code of the species defaults; species not in that table have no row. */
export const freshComposition: Readonly<Record<string, Composition>> = {
  pleurotus_ostreatus: { ndbNumber: 11987, waterGrams: 89.18, proteinGrams: 3.31 },
  lentinula_edodes: { ndbNumber: 11238, waterGrams: 89.74, proteinGrams: 2.24 },
  agaricus_bisporus: { ndbNumber: 11260, waterGrams: 92.45, proteinGrams: 3.09 },
  grifola_frondosa: { ndbNumber: 11993, waterGrams: 90.37, proteinGrams: 1.94 },
};

/**
 * Grams of protein per 100 g fresh counted from amino acids. Source: Mattila et al. 2002, J Agric Food Chem
 * 50:6419-6422 (white, brown, shiitake, oyster).
 */
export const aminoAcidProtein = { lowGrams: 1.8, highGrams: 2.09 } as const;

/** Protein as percent of the dry matter: oyster 3.31 / (100 - 89.18) is 30.6 %. */
export function proteinPercentOfDryMatter(composition: Composition): number {
  return (100 * composition.proteinGrams) / (100 - composition.waterGrams);
}

/**
 * Crude protein percent from nitrogen percent and a factor. 6.25 over-counts because of chitin nitrogen; mushroom
 * work uses 4.38 or 4.7 (Mattila et al. 2002). Nitrogen 4.13 % gives 18.1, 19.4 and 25.8 with 4.38, 4.7 and 6.25.
 */
export function proteinFromNitrogen(nitrogenPercent: number, factor: number): number {
  return nitrogenPercent * factor;
}

/**
 * Protein in a fresh harvest as a range in grams, for reports: low from amino acids (Mattila et al. 2002), high from
 * the larger of that and the food table's crude protein. 100 kg of oyster hold 1.8 to 3.3 kg.
 */
export function proteinRangeGrams(
  freshGrams: number,
  speciesCode: string,
): Answer<{ readonly lowGrams: number; readonly highGrams: number }> {
  const refused = refuseNegative({ freshGrams });
  if (refused) return refused;
  const composition = freshComposition[speciesCode];
  if (!composition) return cannotCompute('outside-table', { speciesCode });
  const high = Math.max(aminoAcidProtein.highGrams, composition.proteinGrams);
  return answer({
    lowGrams: (freshGrams * aminoAcidProtein.lowGrams) / 100,
    highGrams: (freshGrams * high) / 100,
  });
}

/** Dry mushrooms, grams, from a fresh mass and dry matter percent: 10 kg oyster at 10.82 % dry to 1.08 kg. */
export function driedGrams(freshGrams: number, dryMatterPercent: number): number {
  return (freshGrams * dryMatterPercent) / 100;
}
