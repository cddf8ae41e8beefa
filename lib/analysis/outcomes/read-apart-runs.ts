import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { RunMember } from '../comparison/cluster-of-run';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { Measure } from './outcome-sums';

/** Batches of one method with the same runs, whose cluster reaches over several sums, and for what any of them counts. */
export type ApartRuns = RunMember & { readonly methodKey: string; readonly counted: ReadonlySet<Measure> };

/** In the order of the statement's flags. */
const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];
/** A set for each combination of flags: there are thousands of rows and sixteen of these. */
const sets: readonly ReadonlySet<Measure>[] = Array.from(
  { length: 16 },
  (_, flags) => new Set(measures.filter((_measure, at) => (flags >> at) & 1)),
);

/**
 * The batches within the filter whose clusters cannot be counted from sums, put together by runs and method. They come as
 * lines of text, `{run,run} method flags`, which the database writes several times faster than JSON.
 */
export async function readApartRuns(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted & { readonly container: string },
  today: SiteDates,
): Promise<readonly ApartRuns[]> {
  const { from, to, species, container, material } = boundsOf(wanted);
  const [answer] = await db.$queryRaw<{ lines: string | null }[]>`
    with day as materialized (
      select * from unnest(${[...today.keys()]}::uuid[], ${[...today.values()]}::date[]) d (site_id, today)
    ), grouped as (
      select run_ids, method_key,
        bit_or((contamination_class = 'counted' and contamination_enters_on <= today)::int
          + 2 * (yield_class = 'counted' and yield_enters_on <= today)::int
          + 4 * (yield_class = 'counted' and yield_enters_on <= today
            and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0)::int
          + 8 * coalesce(life_class = 'counted', false)::int) as flags
      from batch_outcome join day using (site_id)
      where network_id = ${actor.networkId}::uuid and container = ${container} and apart
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
      group by run_ids, method_key
    )
    select string_agg(run_ids::text || ' ' || method_key || ' ' || flags, E'\n') as lines from grouped`;
  const lines = answer?.lines ? answer.lines.split('\n') : [];
  return lines.map((line, index) => {
    const [runs = '{}', methodKey = '', flags = '0'] = line.split(' ');
    return {
      id: `apart ${index}`,
      runIds: runs.slice(1, -1).split(','),
      methodKey,
      counted: sets[Number(flags)] ?? new Set(),
    };
  });
}
