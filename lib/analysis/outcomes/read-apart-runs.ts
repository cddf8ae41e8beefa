import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { boundsOf } from '../comparison/read-batch-rows';
import { daysAtSites } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';
import type { Since, StateSince } from './written-since';

/**
 * Batches of a site and method whose runs reach over several sums: of each the number of a run, and for what it counts: 1
 * contamination, 2 yield, 4 cropped, 8 log life.
 */
export type ApartCell = {
  readonly methodKey: string;
  readonly runs: number[];
  readonly flags: number[];
  /** Those of several runs, once more. */
  readonly joining: { readonly runIds: readonly string[]; readonly runs: readonly number[] }[];
};

export type ApartOfSites = {
  readonly version: bigint | undefined;
  /** As of the sums of sites. */
  readonly written: readonly string[];
  readonly sites: ReadonlyMap<string, readonly ApartCell[]>;
  /** Of each run that was read, at any time: there are tens of thousands, and their ids are long. */
  readonly numbers: Map<string, number>;
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
  before?: Pick<ApartOfSites, 'version' | 'numbers'>,
): Promise<ApartOfSites> {
  const since: Since = before?.version;
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
  const sites = new Map<string, ApartCell[]>();
  const numbers = before?.numbers ?? new Map<string, number>();
  for (const line of answer?.cells ? answer.cells.split('\n') : []) {
    const [site = '', methodKey = '', ...batches] = line.split(' ');
    const cell: ApartCell = { methodKey, runs: [], flags: [], joining: [] };
    for (const batch of batches) addBatch(cell, batch, numbers);
    const own = sites.get(site);
    if (own === undefined) sites.set(site, [cell]);
    else own.push(cell);
  }
  return { sites, numbers, version: answer?.version ?? undefined, written: answer?.written ?? [] };
}

function numberOf(run: string, numbers: Map<string, number>): number {
  const known = numbers.get(run);
  if (known !== undefined) return known;
  numbers.set(run, numbers.size);
  return numbers.size - 1;
}

function addBatch({ runs, flags, joining }: ApartCell, batch: string, numbers: Map<string, number>): void {
  const end = batch.indexOf('}');
  const ids = batch.slice(1, end);
  flags.push(Number(batch.slice(end + 1)));
  if (!ids.includes(',')) {
    runs.push(numberOf(ids, numbers));
    return;
  }
  const runIds = ids.split(',');
  const own = runIds.map((run) => numberOf(run, numbers));
  runs.push(own[0] ?? 0);
  joining.push({ runIds, runs: own });
}
