import { type Answer, answer, cannotCompute } from './answer';

declare const wetBasis: unique symbol;
declare const dryBasis: unique symbol;

/** Moisture as percent of the wet mass, 0 up to but not including 100. The mushroom trade's basis. */
export type WetBasisPercent = number & { readonly [wetBasis]: true };

/** Moisture as percent of the dry mass, 0 or more; above 100 is ordinary. The basis of wood science tables. */
export type DryBasisPercent = number & { readonly [dryBasis]: true };

/** Marks a number as wet-basis moisture, or refuses it: below 0, 100 or above, not a number. */
export function wetBasisPercent(percent: number): Answer<WetBasisPercent> {
  if (!(percent >= 0 && percent < 100)) {
    return cannotCompute('out-of-range', { argument: 'moistureWetPercent', given: String(percent) });
  }
  return answer(percent as WetBasisPercent);
}

/** Marks a number as dry-basis moisture, or refuses it: below 0, infinite, not a number. */
export function dryBasisPercent(percent: number): Answer<DryBasisPercent> {
  if (!(percent >= 0 && percent < Number.POSITIVE_INFINITY)) {
    return cannotCompute('out-of-range', { argument: 'moistureDryPercent', given: String(percent) });
  }
  return answer(percent as DryBasisPercent);
}

/** Wet basis to dry basis: db = 100 wb / (100 - wb). BEF10 defines both; 70 % wet is 233.33 % dry. */
export function wetToDryBasis(moisture: WetBasisPercent): DryBasisPercent {
  return ((100 * moisture) / (100 - moisture)) as DryBasisPercent;
}

/** Dry basis to wet basis: wb = 100 db / (100 + db). 100 % dry is 50 % wet. */
export function dryToWetBasis(moisture: DryBasisPercent): WetBasisPercent {
  return ((100 * moisture) / (100 + moisture)) as WetBasisPercent;
}

/** Dry matter as a fraction of the wet mass, above 0 up to 1: 1 - wb / 100. */
export function dryMatterFraction(moisture: WetBasisPercent): number {
  return 1 - moisture / 100;
}
