import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FigureBySite } from './by-site-amounts';
import type { Period } from './read-harvest';
import { sumFigure } from './sum-figure';

export type Activity = {
  /** Sites with something inoculated, looked at, found or weighed in the period. */
  readonly sites: FigureBySite;
  /** People who started or recorded something dated in the period and are counted in reports. */
  readonly people: FigureBySite;
  /** Batches inoculated in the period. */
  readonly batches: number;
};

type Row = { siteId: string; personId: string | null; counted: boolean };

/**
 * Sites and people active in a period, by the dates of what was recorded (both days included). A person who works at
 * several sites is one person, shown with the first of them by id. People whose membership says so are not counted.
 */
export async function readActivity(
  { db, actor }: ReadContext,
  { from, to }: Period,
  now: Date,
): Promise<Activity> {
  const network = actor.networkId;
  const rows = await db.$queryRaw<Row[]>`
    with dated as (
      select site_id, created_by_id as person_id from batch
        where network_id = ${network}::uuid and inoculated_on between ${from}::date and ${to}::date and voided_at is null
      union select site_id, started_by_id from batch
        where network_id = ${network}::uuid and inoculated_on between ${from}::date and ${to}::date and voided_at is null
      union select site_id, created_by_id from look
        where network_id = ${network}::uuid and looked_on between ${from}::date and ${to}::date and voided_at is null
      union select site_id, created_by_id from finding
        where network_id = ${network}::uuid and found_on between ${from}::date and ${to}::date and voided_at is null
      union select site_id, created_by_id from loss
        where network_id = ${network}::uuid and lost_on between ${from}::date and ${to}::date and voided_at is null
      union select site_id, created_by_id from weighing
        where network_id = ${network}::uuid and weighed_on between ${from}::date and ${to}::date and voided_at is null
    )
    select d.site_id::text as "siteId", d.person_id::text as "personId", coalesce(m.counted_in_reports, false) as counted
    from dated d left join membership m on m.network_id = ${network}::uuid and m.person_id = d.person_id`;
  const [inoculated] = await db.$queryRaw<{ batches: number }[]>`
    select count(*)::int as batches from batch
    where network_id = ${network}::uuid and inoculated_on between ${from}::date and ${to}::date and voided_at is null`;
  const batches = inoculated?.batches ?? 0;
  const asOf = now.toISOString();
  const sites = new Set(rows.map(({ siteId }) => siteId));
  const people = new Map<string, string>();
  for (const { personId, siteId, counted } of rows) {
    if (personId === null || !counted) continue;
    const known = people.get(personId);
    if (known === undefined || siteId < known) people.set(personId, siteId);
  }
  return {
    batches,
    sites: sumFigure({
      unit: 'sites',
      amounts: [...sites].map((siteId) => ({ siteId, amount: 1 })),
      batches,
      asOf,
    }),
    people: sumFigure({
      unit: 'people',
      amounts: [...people.values()].map((siteId) => ({ siteId, amount: 1 })),
      batches,
      asOf,
    }),
  };
}
