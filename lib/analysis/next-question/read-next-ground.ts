import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays } from '@/lib/growing/calendar-date';
import { methodSuitability } from '@/lib/growing/method-suitability';
import { suitabilityTable } from '@/lib/growing/suitability-table';
import type { MaterialKind } from '@/lib/growing/vocabulary';
import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';
import type { NextGround, SiteMix } from './next-ground';
import { mixesOf } from './site-mixes';

/** Material received within so many days may still lie there. Our choice. */
const stockDays = 180;

/**
 * What every open site has to choose from: what it grew in the period or has received lately, the methods it can use (as
 * said there, otherwise what it has used), and what the network's table says of them.
 */
export async function readNextGround(
  { db, actor }: ReadContext,
  judged: readonly JudgedBatch[],
  today: string,
): Promise<NextGround> {
  const live = { voidedAt: null };
  const sites = await db.site.findMany({ where: { ...live, closedOn: null }, orderBy: { id: 'asc' } });
  const methods = await db.method.findMany({ where: live, orderBy: { id: 'asc' } });
  const materials = await db.material.findMany({ where: live });
  const rows = await db.suitability.findMany({ where: live, orderBy: { id: 'asc' } });
  const said = grouped(await db.siteMethod.findMany(), ({ siteId }) => siteId);
  const used = await db.$queryRaw<{ siteId: string; methodId: string }[]>`
    select distinct site_id::text as "siteId", method_id::text as "methodId" from batch
    where network_id = ${actor.networkId}::uuid and voided_at is null and method_id is not null`;
  const received = await db.$queryRaw<{ siteId: string; materialId: string }[]>`
    select distinct r.site_id::text as "siteId", l.material_id::text as "materialId"
    from substrate_receipt r join substrate_lot l on l.network_id = r.network_id and l.id = r.substrate_lot_id
    where r.network_id = ${actor.networkId}::uuid and r.voided_at is null and l.voided_at is null
      and r.received_on >= ${addDays(today, -stockDays)}::date
    order by 1, 2`;
  const kindOf = new Map(materials.map(({ id, kind }) => [id, kind]));
  const usedAt = grouped(used, ({ siteId }) => siteId);
  const stockAt = grouped(received, ({ siteId }) => siteId);
  const grownAt = grouped(judged, ({ facts }) => facts.siteId);
  const tables = new Map<string, ReturnType<typeof suitabilityTable>>();
  const tableOf = (speciesId: string) => {
    const own = rows.filter((row) => row.speciesId === speciesId || row.speciesId === null);
    const table = tables.get(speciesId) ?? suitabilityTable(own);
    tables.set(speciesId, table);
    return table;
  };
  const withMethods = (mix: Omit<SiteMix, 'methods'>, kind: MaterialKind): SiteMix => ({
    ...mix,
    methods: methods.map((method) => ({
      methodId: method.id,
      ...methodSuitability(tableOf(mix.speciesId), kind, method.kind),
    })),
  });
  return {
    methodKinds: Object.fromEntries(methods.map(({ id, kind }) => [id, kind])),
    sites: sites.map(({ id }) => {
      const known = new Set((usedAt.get(id) ?? []).map(({ methodId }) => methodId));
      const answers = new Map((said.get(id) ?? []).map((row) => [row.methodId, row.available]));
      const unsaid = known.size === 0 && answers.size === 0;
      const stock = (stockAt.get(id) ?? []).map(({ materialId }) => materialId);
      return {
        siteId: id,
        unsaid,
        usable: methods
          .map((method) => method.id)
          .filter((one) => unsaid || (answers.get(one) ?? known.has(one))),
        mixes: mixesOf(grownAt.get(id) ?? [], stock).flatMap((mix) => {
          const kind = kindOf.get(mix.materialId);
          return kind === undefined ? [] : [withMethods(mix, kind)];
        }),
      };
    }),
  };
}
