import type { MaterialSuitability, MethodSuitability, SuitabilityVerdict } from './species-default';
import type { MaterialKind, MethodKind } from './vocabulary';

/*
 * Rows of the suitability tables: which material and treatment suit a kind of mushroom, with the reason a
 * warning shows. Common practice throughout; no source with numbers covers a whole table.
 */

export function materialRow(
  material: MaterialKind,
  verdict: SuitabilityVerdict,
  en: string,
  es: string,
): MaterialSuitability {
  return { material, verdict, reason: { en, es } };
}

export function methodRow(
  method: MethodKind,
  verdict: SuitabilityVerdict,
  en: string,
  es: string,
): MethodSuitability {
  return { method, verdict, reason: { en, es } };
}

export const spentSubstrateRow = materialRow(
  'spent_substrate',
  'possible',
  'Much of the food is used up: expect a smaller crop and more competitors.',
  'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.',
);

export const noLimeRow = methodRow(
  'cold_lime_soak',
  'unsuited',
  'Use a lime soak only for oysters and the like; this species does not bear the high pH.',
  'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.',
);
