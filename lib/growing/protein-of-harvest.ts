import { type Answer, answer, cannotCompute } from './answer';
import { freshComposition, proteinRangeGrams } from './mushroom-composition';

/** Protein as percent of dry weight of button and oyster mushrooms; common practice, no published source. */
export const commonPracticeProtein = { lowPercent: 20, highPercent: 35 } as const;

const told: readonly string[] = ['pleurotus_ostreatus', 'agaricus_bisporus'];

export type ProteinOfHarvest = {
  /** From amino acids (Mattila et al. 2002) up to the food table's crude protein (USDA SR). */
  readonly lowGrams: number;
  readonly highGrams: number;
  /** By the rule of thumb over the food table's dry matter; only for the two species it is told of. */
  readonly byRule: { readonly lowGrams: number; readonly highGrams: number } | undefined;
};

/**
 * Protein in a fresh harvest as a range with its basis, and the rule of thumb beside it for comparison.
 * 100 kg of oyster: 1.8-3.3 kg; at 20-35 % of 10.82 kg dry matter 2.2-3.8 kg.
 *
 * @returns cannot compute `outside-table` for a species without a published composition
 */
export function proteinOfHarvest(freshGrams: number, speciesCode: string): Answer<ProteinOfHarvest> {
  const range = proteinRangeGrams(freshGrams, speciesCode);
  if (range.kind !== 'value') return range;
  const composition = freshComposition[speciesCode];
  if (!composition) return cannotCompute('outside-table', { speciesCode });
  const dryGrams = (freshGrams * (100 - composition.waterGrams)) / 100;
  const { lowPercent, highPercent } = commonPracticeProtein;
  return answer({
    ...range.value,
    byRule: told.includes(speciesCode)
      ? { lowGrams: (dryGrams * lowPercent) / 100, highGrams: (dryGrams * highPercent) / 100 }
      : undefined,
  });
}
