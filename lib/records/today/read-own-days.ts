import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OwnDays } from '@/lib/growing/due/batch-facts';
import { ownDays } from '@/lib/growing/due/own-days';

type Group = { readonly siteId: string; readonly speciesId: string; readonly container: string };
type Row = Group & { readonly picked: number[]; readonly colonised: number[] };

/** What the batches of one site, species and container took. */
export type OwnHistory = { readonly colonised: OwnDays | null; readonly firstHarvest: OwnDays | null };

const key = ({ siteId, speciesId, container }: Group) => `${siteId} ${speciesId} ${container}`;
/** Enough to find the last eight that were picked, though some never were. */
const latestBatches = 24;
const none: OwnHistory = { colonised: null, firstHarvest: null };

/**
 * Days to full colonisation and to the first picking of a site's own batches of a species and container, of the last two
 * dozen begun, for each of the groups. Second lives are left out: theirs is another clock.
 */
export async function readOwnDays(
  { db, actor }: ReadContext,
  groups: readonly Group[],
): Promise<(group: Group) => OwnHistory> {
  const network = actor.networkId;
  const distinct = [...new Map(groups.map((group) => [key(group), group])).values()];
  if (distinct.length === 0) return () => none;
  const rows = await db.$queryRaw<Row[]>`
    with wanted as materialized (
      select * from unnest(${distinct.map(({ siteId }) => siteId)}::uuid[], ${distinct.map(({ speciesId }) => speciesId)}::uuid[],
        ${distinct.map(({ container }) => container)}::text[]) w (site_id, species_id, container)
    ), days as materialized (
      select w.site_id, w.species_id, w.container, t.batch_id, t.inoculated_on,
        (select min(g.weighed_on) from weighing_line i
          join weighing g on g.network_id = i.network_id and g.id = i.weighing_id and g.voided_at is null
          where i.network_id = ${network}::uuid and i.batch_id = t.batch_id and i.voided_at is null) - t.inoculated_on as picked,
        (select min(c.checked_on) from "check" c where c.network_id = ${network}::uuid and c.batch_id = t.batch_id
          and c.voided_at is null and c.kind = 'fully_colonised') - t.inoculated_on as colonised
      from wanted w cross join lateral (
        select o.batch_id, o.inoculated_on from batch_outcome o
        where o.network_id = ${network}::uuid and o.site_id = w.site_id and o.species_id = w.species_id and o.container = w.container
          and not o.voided and not o.second_life
        order by o.inoculated_on desc, o.batch_id desc limit ${latestBatches}) t
    )
    select site_id as "siteId", species_id as "speciesId", container,
      coalesce(array_agg(picked order by inoculated_on desc, batch_id desc) filter (where picked > 0), '{}') as picked,
      coalesce(array_agg(colonised order by inoculated_on desc, batch_id desc) filter (where colonised > 0), '{}') as colonised
    from days group by site_id, species_id, container`;
  const own = new Map(
    rows.map((row) => [
      key(row),
      { colonised: ownDays(row.colonised), firstHarvest: ownDays(row.picked) } satisfies OwnHistory,
    ]),
  );
  return (group) => own.get(key(group)) ?? none;
}
