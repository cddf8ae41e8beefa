import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { daysAtSites } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';
import type { Since, StateSince } from './written-since';

/** A batch whose run reaches over several sums, for what it counts: 1 contamination, 2 yield, 4 cropped, 8 log life. */
export type ApartBatch = {
  readonly runIds: readonly string[];
  readonly methodKey: string;
  readonly flags: number;
};

export type ApartOfSites = {
  readonly version: bigint | undefined;
  /** As of the sums of sites. */
  readonly written: readonly string[];
  readonly sites: ReadonlyMap<string, readonly ApartBatch[]>;
};

type Lists = StateSince & { cells: string | null };

/**
 * The batches within the filter, of any method, whose clusters cannot be counted from sums, by site: of all sites or of
 * those written since a state. They come as lines of a site's batches of one method, `{run,run}flags` one after another,
 * which the database writes several times faster than JSON.
 */
export async function readApartRuns(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
  since?: Since,
): Promise<ApartOfSites> {
  const network = actor.networkId;
  const { from, to, species, container, material } = boundsOf(wanted);
  const { first, later, twoLater } = daysAtSites(today);
  const [answer] = await db.$queryRaw<Lists[]>`
    with written as materialized (
      select array_agg(site_id) as sites from outcome_site_version where network_id = ${network}::uuid and version > ${since ?? null}::bigint
    ), found as (
      select site_id, method_key, run_ids::text ||
        ((contamination_class = 'counted' and contamination_enters_on <= today)::int
          + 2 * (yield_class = 'counted' and yield_enters_on <= today)::int
          + 4 * (yield_class = 'counted' and yield_enters_on <= today
            and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
          + 8 * coalesce(life_class = 'counted', false)::int)::text as batch
      from (select *, ${first}::date + (site_id = any (${later}::uuid[]))::int + (site_id = any (${twoLater}::uuid[]))::int as today
        from batch_outcome) o
      where network_id = ${network}::uuid and container = ${container} and apart
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
        and (${since ?? null}::bigint is null or site_id = any ((select sites from written)::uuid[]))
    ), cells as (
      select site_id::text || ' ' || method_key || ' ' || string_agg(batch, ' ') as cell from found group by site_id, method_key
    )
    select (select string_agg(cell, E'\n') from cells) as cells,
      (select version from outcome_version where network_id = ${network}::uuid) as version,
      (select sites::text[] from written) as written`;
  const sites = new Map<string, ApartBatch[]>();
  for (const line of answer?.cells ? answer.cells.split('\n') : []) {
    const [site = '', methodKey = '', ...batches] = line.split(' ');
    const own = sites.get(site) ?? [];
    sites.set(site, own);
    for (const batch of batches) {
      const end = batch.indexOf('}');
      own.push({ methodKey, runIds: batch.slice(1, end).split(','), flags: Number(batch.slice(end + 1)) });
    }
  }
  return { sites, version: answer?.version ?? undefined, written: answer?.written ?? [] };
}
