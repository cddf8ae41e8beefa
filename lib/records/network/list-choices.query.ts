import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { MaterialKind, MethodKind } from '@/lib/database/generated/enums';

type Named = { readonly id: string; readonly code: string; readonly en: string; readonly es: string };

/** What forms and filters offer to choose from in this network. */
export type NetworkChoices = {
  readonly species: readonly (Named & { readonly scientificName: string })[];
  readonly materials: readonly (Named & { readonly kind: MaterialKind })[];
  readonly methods: readonly (Named & { readonly kind: MethodKind })[];
};

export async function listChoices({ db }: ReadContext): Promise<NetworkChoices> {
  const live = { where: { voidedAt: null }, orderBy: { nameEn: 'asc' } } as const;
  const species = await db.species.findMany(live);
  const materials = await db.material.findMany(live);
  const methods = await db.method.findMany(live);
  const named = (row: { id: string; code: string; nameEn: string; nameEs: string }) => ({
    id: row.id,
    code: row.code,
    en: row.nameEn,
    es: row.nameEs,
  });
  return {
    species: species.map((row) => ({ ...named(row), scientificName: row.scientificName })),
    materials: materials.map((row) => ({ ...named(row), kind: row.kind })),
    methods: methods.map((row) => ({ ...named(row), kind: row.kind })),
  };
}
