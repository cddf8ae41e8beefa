import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { RunMember } from '../comparison/cluster-of-run';
import { boundsOf } from '../comparison/read-batch-rows';
import { daysAtSites } from './days-at-sites';
import type { Measure } from './outcome-sums';
import type { OutcomesWanted } from './outcomes-wanted';

/** Batches of one method with the same runs, joined with others by a batch of several runs, and for what any of them counts. */
export type JoinedRuns = RunMember & {
  readonly methodKey: string;
  readonly counted: ReadonlySet<Measure>;
};

/** How many treatment runs count for each measure: of a method, or of all together where that is null. */
export type AloneRuns = readonly [methodKey: string | null, ...counts: number[]];

/** Clusters that cannot be counted from sums: runs that reach over several of them. */
export type ApartRuns = { readonly joined: readonly JoinedRuns[]; readonly alone: readonly AloneRuns[] };

/** In the order of the statement's flags. */
export const measuresOfRuns: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];
/** A set for each combination of flags: there are thousands of rows and sixteen of these. */
const sets: readonly ReadonlySet<Measure>[] = Array.from(
  { length: 16 },
  (_, flags) => new Set(measuresOfRuns.filter((_measure, at) => (flags >> at) & 1)),
);

/**
 * The runs within the filter, of any method, whose clusters cannot be counted from sums. A run whose batches were treated in it alone is a
 * cluster, and counted by the database; those that a batch of several runs joins come one by one, put together by runs
 * and method, as lines of text, `{run,run} method flags`, which the database writes several times faster than JSON.
 */
export async function readApartRuns(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<ApartRuns> {
  const { from, to, species, container, material } = boundsOf(wanted);
  const { first, later, twoLater } = daysAtSites(today);
  const [answer] = await db.$queryRaw<{ lines: string | null; alone: string | null }[]>`
    with found as materialized (
      select run_ids, cardinality(run_ids) > 1 as joins, method_key,
        (contamination_class = 'counted' and contamination_enters_on <= today)::int
          + 2 * (yield_class = 'counted' and yield_enters_on <= today)::int
          + 4 * (yield_class = 'counted' and yield_enters_on <= today
            and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
          + 8 * coalesce(life_class = 'counted', false)::int as flags
      from (select *, ${first}::date + (site_id = any (${later}::uuid[]))::int + (site_id = any (${twoLater}::uuid[]))::int as today
        from batch_outcome) o
      where network_id = ${actor.networkId}::uuid and container = ${container} and apart
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
    ), joining as (
      select run_ids, method_key, bit_or(flags) as flags from found where joins group by run_ids, method_key
    ), touched as materialized (
      select distinct unnest(run_ids) as run from joining
    ), single as materialized (
      select run, method_key, bit_or(flags) as flags, bool_or(touched.run is not null) as joined
      from (select run_ids[1] as run, method_key, flags from found where not joins offset 0) one left join touched using (run)
      group by run, method_key
    ), whole as (
      select run, bit_or(flags) as flags from single where not joined group by run
    ), alone as (
      select method_key, flags from single where not joined union all select null, flags from whole
    ), counts as (
      select json_build_array(method_key, count(*) filter (where flags & 1 > 0), count(*) filter (where flags & 2 > 0),
        count(*) filter (where flags & 4 > 0), count(*) filter (where flags & 8 > 0)) as count from alone group by method_key
    )
    select (select json_agg(count)::text from counts) as alone,
      (select string_agg(line, E'\n') from (
        select run_ids::text || ' ' || method_key || ' ' || flags as line from joining
        union all select '{' || run || '} ' || method_key || ' ' || flags from single where joined) l) as lines`;
  const lines = answer?.lines ? answer.lines.split('\n') : [];
  return {
    // The shape is the statement's own.
    alone: JSON.parse(answer?.alone ?? '[]') as AloneRuns[],
    joined: lines.map((line, index) => {
      const [runs = '{}', methodKey = '', flags = '0'] = line.split(' ');
      return {
        id: `apart ${index}`,
        runIds: runs.slice(1, -1).split(','),
        methodKey,
        counted: sets[Number(flags)] ?? new Set(),
      };
    }),
  };
}
