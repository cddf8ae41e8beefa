import { type Answer, answer, cannotCompute } from './answer';
import { type DryBasisPercent, type WetBasisPercent, wetToDryBasis } from './moisture-basis';

/**
 * Moisture of a sample dried to constant mass.
 * Wet basis = 100 (initial - dry) / initial; dry basis = 100 (initial - dry) / dry. Source: BEF10.
 * Refuses a dry mass of 0 or less, or above the initial mass.
 */
export function moistureFromDrying(
  initialGrams: number,
  dryGrams: number,
): Answer<{ readonly wetPercent: WetBasisPercent; readonly dryPercent: DryBasisPercent }> {
  if (!(initialGrams > 0 && initialGrams < Number.POSITIVE_INFINITY)) {
    return cannotCompute('out-of-range', { argument: 'initialGrams', given: String(initialGrams) });
  }
  if (!(dryGrams > 0 && dryGrams <= initialGrams)) {
    return cannotCompute('out-of-range', { argument: 'dryGrams', given: String(dryGrams) });
  }
  const wetPercent = ((100 * (initialGrams - dryGrams)) / initialGrams) as WetBasisPercent;
  return answer({ wetPercent, dryPercent: wetToDryBasis(wetPercent) });
}
