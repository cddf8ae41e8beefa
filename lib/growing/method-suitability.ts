import type { SuitabilityTable } from './check-suitability';
import type { LocalText } from './local-text';
import type { SuitabilityVerdict } from './species-default';
import type { MaterialKind, MethodKind } from './vocabulary';

/** What a table says of a method for a material and a species; `not-listed` where it says nothing. */
export type MethodSuitabilityWord = {
  readonly verdict: SuitabilityVerdict | 'not-listed';
  /** Of the rows that gave the verdict. */
  readonly reasons: readonly LocalText[];
};

const worstFirst = ['unsuited', 'possible', 'suits'] as const;

/**
 * The worst of what the rows of a table say of a method with a species, of it with a material, and of the material with the
 * species, with the reasons of the rows that say so. Unlike `checkSuitability` it also says what is well, and tells
 * that from what nobody has written down.
 */
export function methodSuitability(
  table: SuitabilityTable,
  material: MaterialKind,
  method: MethodKind,
): MethodSuitabilityWord {
  const rows = [
    ...table.methods.filter((row) => row.method === method),
    ...table.pairs.filter((row) => row.material === material && row.method === method),
    ...table.materials.filter((row) => row.material === material && row.verdict !== 'suits'),
  ];
  const verdict = worstFirst.find((one) => rows.some((row) => row.verdict === one));
  if (verdict === undefined) return { verdict: 'not-listed', reasons: [] };
  return { verdict, reasons: rows.filter((row) => row.verdict === verdict).map(({ reason }) => reason) };
}
