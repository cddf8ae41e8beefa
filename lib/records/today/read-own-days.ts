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
 * Days to full colonisation and to the first picking of each site's own batches by species and container, of the last
 * two dozen begun. Second lives are left out: theirs is another clock.
 */
export async function readOwnDays({ db, actor }: ReadContext): Promise<(group: Group) => OwnHistory> {
  const network = actor.networkId;
  const rows = await db.$queryRaw<Row[]>`
    with latest as (
      select b.id, b.site_id, b.species_id, b.container_kind, b.inoculated_on,
        row_number() over (partition by b.site_id, b.species_id, b.container_kind
          order by b.inoculated_on desc, b.id desc) as place
      from batch b where b.network_id = ${network}::uuid and b.voided_at is null and not b.second_life
    ), days as (
      select t.*,
        (select min(g.weighed_on) from weighing_line i
          join weighing g on g.network_id = i.network_id and g.id = i.weighing_id and g.voided_at is null
          where i.network_id = ${network}::uuid and i.batch_id = t.id and i.voided_at is null) - t.inoculated_on as picked,
        (select min(c.checked_on) from "check" c where c.network_id = ${network}::uuid and c.batch_id = t.id
          and c.voided_at is null and c.kind = 'fully_colonised') - t.inoculated_on as colonised
      from latest t where t.place <= ${latestBatches}
    )
    select site_id as "siteId", species_id as "speciesId", container_kind::text as container,
      coalesce(array_agg(picked order by inoculated_on desc, id desc) filter (where picked > 0), '{}') as picked,
      coalesce(array_agg(colonised order by inoculated_on desc, id desc) filter (where colonised > 0), '{}') as colonised
    from days group by site_id, species_id, container_kind`;
  const own = new Map(
    rows.map((row) => [
      key(row),
      { colonised: ownDays(row.colonised), firstHarvest: ownDays(row.picked) } satisfies OwnHistory,
    ]),
  );
  return (group) => own.get(key(group)) ?? none;
}
