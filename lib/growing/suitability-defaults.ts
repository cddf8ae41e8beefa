import type { LocalText } from './local-text';
import { materialMethodDefaults } from './material-method-suitability';
import type { SuitabilityVerdict } from './species-default';
import { speciesDefaults } from './species-defaults';
import type { MaterialKind, MethodKind } from './vocabulary';

/**
 * One row of the table that a network starts with: exactly two of species, material and method are named, and the
 * verdict with its reason is about those two. Common practice throughout.
 */
export type SuitabilityDefault = {
  readonly speciesCode: string | null;
  readonly material: MaterialKind | null;
  readonly method: MethodKind | null;
  readonly verdict: SuitabilityVerdict;
  readonly reason: LocalText;
};

export const suitabilityDefaults: readonly SuitabilityDefault[] = [
  ...speciesDefaults.flatMap(({ code, materials, methods }): SuitabilityDefault[] => [
    ...materials.map((row) => ({ ...row, speciesCode: code, method: null })),
    ...methods.map((row) => ({ ...row, speciesCode: code, material: null })),
  ]),
  ...materialMethodDefaults.map((row) => ({ ...row, speciesCode: null })),
];
