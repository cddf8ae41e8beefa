import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { MaterialKind } from '@/lib/growing/vocabulary';
import type { LeftOut } from '../shown-figure';
import type { FigureBySite } from './by-site-amounts';
import type { Period } from './read-harvest';
import { sumFigure } from './sum-figure';

/** Dry kg of one material put to use; `mixed` where a batch was filled with several. */
export type ResidueUse = {
  readonly material:
    | { readonly id: string; readonly en: string; readonly es: string }
    | 'mixed'
    | 'not-recorded';
  readonly kind: MaterialKind | null;
  readonly kilograms: FigureBySite;
};

type Row = {
  materialId: string | null;
  mixed: boolean;
  siteId: string;
  grams: number;
  batches: number;
  noMassBatches: number;
  noMassUnits: number;
};

/**
 * Dry mass of substrate put to use in a period, by date of inoculation (both days included) and by material, without
 * supplement, spawn, gypsum or lime. Second lives are left out: their substrate was counted when it was first filled.
 * Batches whose dry mass is unknown are left out and named.
 */
export async function readResidues(
  { db, actor }: ReadContext,
  { from, to }: Period,
  now: Date,
): Promise<readonly ResidueUse[]> {
  const rows = await db.$queryRaw<Row[]>`
    select material_id::text as "materialId", mixed_material as mixed, site_id::text as "siteId",
      coalesce(sum(dry_grams - dry_supplement_grams), 0)::float8 as grams, count(dry_grams)::int as batches,
      count(*) filter (where dry_grams is null)::int as "noMassBatches",
      coalesce(sum(unit_count) filter (where dry_grams is null), 0)::int as "noMassUnits"
    from batch
    where network_id = ${actor.networkId}::uuid and inoculated_on between ${from}::date and ${to}::date
      and voided_at is null and not second_life
    group by material_id, mixed_material, site_id`;
  const materials = await db.material.findMany({
    select: { id: true, nameEn: true, nameEs: true, kind: true },
    orderBy: [{ nameEn: 'asc' }, { id: 'asc' }],
  });
  const asOf = now.toISOString();
  const figureOf = (own: readonly Row[]) => sumFigure({ ...summed(own), unit: 'kilograms', asOf });
  const named = materials.flatMap(({ id, nameEn, nameEs, kind }) => {
    const own = rows.filter((row) => row.materialId === id);
    const material = { id, en: nameEn, es: nameEs };
    return own.length === 0 ? [] : [{ material, kind, kilograms: figureOf(own) }];
  });
  const mixed = rows.filter((row) => row.mixed);
  const unknown = rows.filter((row) => !row.mixed && row.materialId === null);
  return [
    ...named,
    ...(mixed.length === 0 ? [] : [{ material: 'mixed' as const, kind: null, kilograms: figureOf(mixed) }]),
    ...(unknown.length === 0
      ? []
      : [{ material: 'not-recorded' as const, kind: null, kilograms: figureOf(unknown) }]),
  ];
}

function summed(rows: readonly Row[]) {
  const sum = (of: (row: Row) => number) => rows.reduce((total, row) => total + of(row), 0);
  const noMass: LeftOut = {
    reason: 'no-dry-mass',
    batches: sum((row) => row.noMassBatches),
    units: sum((row) => row.noMassUnits),
  };
  return {
    amounts: rows.map(({ siteId, grams }) => ({ siteId, amount: grams })),
    batches: sum((row) => row.batches),
    leftOut: noMass.batches === 0 ? [] : [noMass],
  };
}
