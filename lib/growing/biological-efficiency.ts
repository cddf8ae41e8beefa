import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import type { ContainerKind } from './vocabulary';

/** What BE divides by. Spawn, gypsum and lime are never in it. */
export const beDenominator = 'dry substrate + dry supplement, without spawn, gypsum and lime' as const;

export type BiologicalEfficiency = {
  /** Percent, 0 or more; above 100 is possible because mushrooms are mostly water. */
  readonly bePercent: number;
  readonly freshGrams: number;
  readonly dryGrams: number;
};

/**
 * Biological efficiency: fresh mushrooms / dry substrate x 100 (definition D1: Chang & Miles 2004, Royse).
 * `dryGrams` is dry substrate + dry supplement. 444 g from 500 g dry is 88.8 % (Nasir et al.).
 * A missing or zero dry mass is "cannot compute", never 0 and never infinite; no mushrooms at all is BE 0.
 */
export function biologicalEfficiency(
  freshGrams: number | null,
  dryGrams: number | null,
): Answer<BiologicalEfficiency> {
  if (freshGrams === null) return cannotCompute('fresh-mass-missing');
  if (dryGrams === null) return cannotCompute('dry-mass-missing');
  const refused = refuseNegative({ freshGrams, dryGrams });
  if (refused) return refused;
  if (dryGrams === 0) return cannotCompute('dry-mass-zero', { freshGrams });
  return answer({ bePercent: (100 * freshGrams) / dryGrams, freshGrams, dryGrams });
}

/**
 * Pooled BE of several batches: sum(fresh) / sum(dry) x 100, not the mean of their BEs.
 * 444 g of 500 g and 166 g of 1000 g pool to 40.67 %; the mean of the two BEs would be 52.70.
 * Batches without a dry mass must be left out (and named) by the caller; here they make the answer unknown.
 */
export function pooledBiologicalEfficiency(
  batches: readonly { readonly freshGrams: number | null; readonly dryGrams: number | null }[],
): Answer<BiologicalEfficiency> {
  let fresh = 0;
  let dry = 0;
  for (const { freshGrams, dryGrams } of batches) {
    const one = biologicalEfficiency(freshGrams, dryGrams);
    if (one.kind !== 'value') return one;
    fresh += one.value.freshGrams;
    dry += one.value.dryGrams;
  }
  return biologicalEfficiency(fresh, batches.length === 0 ? null : dry);
}

/**
 * Whether BE is the figure for a container: beds never (kg per m2 instead), logs only once their life is over
 * (g per log per year until then), everything else always. `null` when BE may be given.
 */
export function whyNoBe(
  container: ContainerKind,
  lifeIsOver: boolean,
): 'beds-have-no-be' | 'log-not-finished' | null {
  if (container === 'bed') return 'beds-have-no-be';
  return container === 'log' && !lifeIsOver ? 'log-not-finished' : null;
}
