import type { SuitabilityTable } from './check-suitability';
import type { SuitabilityVerdict } from './species-default';
import type { MaterialKind, MethodKind } from './vocabulary';

type Row = {
  readonly materialKind: MaterialKind | null;
  readonly methodKind: MethodKind | null;
  readonly verdict: SuitabilityVerdict;
  readonly reasonEn: string;
  readonly reasonEs: string;
};

/** The rows of one species and those of no species, sorted into the table that a choice is checked against. */
export function suitabilityTable(rows: readonly Row[]): SuitabilityTable {
  const said = ({ verdict, reasonEn, reasonEs }: Row) => ({
    verdict,
    reason: { en: reasonEn, es: reasonEs },
  });
  const named = (row: Row): { material: MaterialKind | null; method: MethodKind | null } => ({
    material: row.materialKind,
    method: row.methodKind,
  });
  return {
    materials: rows.flatMap((row) => {
      const { material, method } = named(row);
      return material !== null && method === null ? [{ material, ...said(row) }] : [];
    }),
    methods: rows.flatMap((row) => {
      const { material, method } = named(row);
      return material === null && method !== null ? [{ method, ...said(row) }] : [];
    }),
    pairs: rows.flatMap((row) => {
      const { material, method } = named(row);
      return material !== null && method !== null ? [{ material, method, ...said(row) }] : [];
    }),
  };
}
