import type { ReadContext } from '@/lib/access/context';
import type { Period } from '@/lib/analysis/production/read-production';

/** Records of a report's period that were written, changed or taken out since it was built. */
export type LaterEntries = {
  readonly table: 'weighing' | 'batch' | 'sale' | 'training';
  readonly siteId: string;
  readonly created: number;
  readonly changed: number;
  readonly voided: number;
};

/** Which records are why the figures of a report differ now, by site; a record counts once in each column. */
export async function readLaterEntries(
  { db, actor }: ReadContext,
  { from, to }: Period,
  since: Date,
): Promise<LaterEntries[]> {
  return db.$queryRaw<LaterEntries[]>`
    with record as (
      select 'weighing' as name, id, site_id from weighing where network_id = ${actor.networkId}::uuid
        and weighed_on between ${from}::date and ${to}::date
      union all select 'batch', id, site_id from batch where network_id = ${actor.networkId}::uuid
        and inoculated_on between ${from}::date and ${to}::date
      union all select 'sale', id, site_id from sale where network_id = ${actor.networkId}::uuid
        and sold_on between ${from}::date and ${to}::date
      union all select 'training', id, site_id from training where network_id = ${actor.networkId}::uuid
        and held_on between ${from}::date and ${to}::date)
    select r.name as "table", r.site_id::text as "siteId",
      (count(distinct r.id) filter (where h.action = 'created'))::int as created,
      (count(distinct r.id) filter (where h.action = 'changed' and h.new_values->>'voided_at' is null))::int as changed,
      (count(distinct r.id) filter (where h.new_values->>'voided_at' is not null))::int as voided
    from record r join history h on h.network_id = ${actor.networkId}::uuid and h.record_id = r.id and h.table_name = r.name
    where h.at > ${since} group by r.name, r.site_id order by r.name, r.site_id`;
}
