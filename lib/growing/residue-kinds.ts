import type { MaterialKind } from './vocabulary';

/** Materials that are no residue put to use: wood cut for growing on, and what a first life has counted already. */
export const notResidues = ['log_wood', 'spent_substrate'] as const satisfies readonly MaterialKind[];
export type NotResidue = (typeof notResidues)[number];

/** Whether a material counts as a residue put to use; a mixture does. */
export function isResidue(material: MaterialKind | 'mixed'): boolean {
  return !notResidues.some((kind) => kind === material);
}
