import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The network's table of what suits what; rows of no species are about a material with a method. */
export async function listSuitability({ db }: ReadContext) {
  const live = { voidedAt: null };
  const species = await db.species.findMany({ where: live, orderBy: { nameEn: 'asc' } });
  const rows = await db.suitability.findMany({ where: live, orderBy: { id: 'asc' } });
  return {
    species: species.map((row) => ({ id: row.id, en: row.nameEn, es: row.nameEs })),
    rows: rows.map((row) => ({
      id: row.id,
      revision: row.revision,
      speciesId: row.speciesId,
      materialKind: row.materialKind,
      methodKind: row.methodKind,
      verdict: row.verdict,
      en: row.reasonEn,
      es: row.reasonEs,
    })),
  };
}

export type SuitabilityList = Awaited<ReturnType<typeof listSuitability>>;
export type SuitabilityLine = SuitabilityList['rows'][number];
