import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { type Hemisphere, hemisphereOf } from '@/lib/growing/hemisphere';
import { type Season, seasonNames, seasonOf, seasons } from '@/lib/growing/season';
import { type Equipment, readEquipment } from './read-equipment';
import { readStock } from './read-stock';

/** What can be chosen for a site's next batch, and what it is when nothing is chosen. */
export type NextOptions = {
  readonly siteId: string;
  readonly timeZone: string;
  readonly hemisphere: Hemisphere;
  /** The season of today at the site. */
  readonly season: Season;
  /** Ids of what is there to choose; of materials also which the site has grown on or received lately. */
  readonly species: readonly string[];
  readonly materials: readonly { readonly id: string; readonly here: boolean }[];
  readonly methods: readonly string[];
  readonly equipment: Equipment;
};

/** Of one open site that the reader may see; undefined otherwise. */
export async function readNextOptions(
  context: ReadContext,
  siteId: string,
  now: Date,
): Promise<NextOptions | undefined> {
  const { db, actor } = context;
  const site = await db.site.findFirst({ where: { id: siteId, voidedAt: null, closedOn: null } });
  if (!site) return undefined;
  const live = { where: { voidedAt: null }, select: { id: true }, orderBy: { id: 'asc' } } as const;
  const [species, materials, methods] = [
    await db.species.findMany(live),
    await db.material.findMany(live),
    await db.method.findMany(live),
  ];
  const grown = await db.$queryRaw<{ id: string }[]>`
    select m.id::text as id from material m
    where m.network_id = ${actor.networkId}::uuid and exists (select 1 from batch b
      where b.network_id = m.network_id and b.site_id = ${siteId}::uuid and b.material_id = m.id and b.voided_at is null)`;
  const today = todayInZone(site.timeZone, now);
  const here = new Set([...grown.map(({ id }) => id), ...(await readStock(context, today))(siteId)]);
  const methodIds = methods.map(({ id }) => id);
  const hemisphere = hemisphereOf(site.timeZone);
  const season = seasonOf(today, hemisphere);
  return {
    siteId,
    timeZone: site.timeZone,
    hemisphere,
    season: seasonNames.find((name) => seasons[name] === season) ?? 'winter',
    species: species.map(({ id }) => id),
    materials: materials.map(({ id }) => ({ id, here: here.has(id) })),
    methods: methodIds,
    equipment: (await readEquipment(context, methodIds, siteId))(siteId),
  };
}
