import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { hemisphereOf } from '@/lib/growing/hemisphere';
import { methodSuitability } from '@/lib/growing/method-suitability';
import { seasonOf } from '@/lib/growing/season';
import { suitabilityTable } from '@/lib/growing/suitability-table';
import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';
import type { AskedMix, NextGround, SiteMix } from './next-ground';
import { readEquipment } from './read-equipment';
import { readStock } from './read-stock';
import { mixAsked, mixesOf } from './site-mixes';

/**
 * What every open site has to choose from: what it grew in the period or has received lately, the methods it can use, and
 * what the network's table says of them. With `only` that site with what was asked of it, and every method.
 */
export async function readNextGround(
  context: ReadContext,
  judged: readonly JudgedBatch[],
  today: string,
  only?: AskedMix,
): Promise<NextGround> {
  const { db } = context;
  const live = { voidedAt: null };
  const sites = await db.site.findMany({
    where: { ...live, closedOn: null, ...(only ? { id: only.siteId } : {}) },
    orderBy: { id: 'asc' },
  });
  const methods = await db.method.findMany({ where: live, orderBy: { id: 'asc' } });
  const materials = await db.material.findMany({ where: live });
  const rows = await db.suitability.findMany({ where: live, orderBy: { id: 'asc' } });
  const methodIds = methods.map(({ id }) => id);
  const equipment = await readEquipment(context, methodIds, only?.siteId);
  const stockOf = await readStock(context, today);
  const kindOf = new Map(materials.map(({ id, kind }) => [id, kind]));
  const grownAt = grouped(judged, ({ facts }) => facts.siteId);
  const tables = new Map<string, ReturnType<typeof suitabilityTable>>();
  const tableOf = (speciesId: string) => {
    const own = rows.filter((row) => row.speciesId === speciesId || row.speciesId === null);
    const table = tables.get(speciesId) ?? suitabilityTable(own);
    tables.set(speciesId, table);
    return table;
  };
  const withMethods = (mix: Omit<SiteMix, 'methods'>): SiteMix[] => {
    const kind = kindOf.get(mix.materialId);
    if (kind === undefined) return [];
    const said = methods.map((method) => ({
      methodId: method.id,
      ...methodSuitability(tableOf(mix.speciesId), kind, method.kind),
    }));
    return [{ ...mix, methods: said }];
  };
  return {
    methodKinds: Object.fromEntries(methods.map(({ id, kind }) => [id, kind])),
    sites: sites.map(({ id, timeZone }) => {
      const grown = grownAt.get(id) ?? [];
      const { usable, unsaid } = equipment(id);
      const mixes = only
        ? [mixAsked(only, grown, stockOf(id), judged)].flatMap((mix) => mix ?? [])
        : mixesOf(grown, stockOf(id));
      return {
        siteId: id,
        unsaid,
        season: only ? only.season : seasonOf(today, hemisphereOf(timeZone)),
        usable: only ? methodIds : usable,
        mixes: mixes.flatMap(withMethods),
      };
    }),
  };
}
