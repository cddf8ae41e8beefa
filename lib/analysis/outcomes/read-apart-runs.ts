import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { RunMember } from '../comparison/cluster-of-run';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { Measure } from './outcome-sums';

/** Batches of one method with the same runs, whose cluster reaches over several sums, and for what any of them counts. */
export type ApartRuns = RunMember & { readonly methodKey: string; readonly counted: ReadonlySet<Measure> };

type Row = readonly [
  runs: readonly string[],
  method: string,
  c: boolean,
  y: boolean,
  crop: boolean,
  life: boolean,
];

/** The batches within the filter whose clusters cannot be counted from sums, put together by runs and method. */
export async function readApartRuns(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted & { readonly container: string },
  today: SiteDates,
): Promise<readonly ApartRuns[]> {
  const { from, to, species, container, material } = boundsOf(wanted);
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    with day as materialized (
      select * from unnest(${[...today.keys()]}::uuid[], ${[...today.values()]}::date[]) d (site_id, today)
    ), grouped as (
      select run_ids, method_key,
        bool_or(contamination_class = 'counted' and contamination_enters_on <= today) as contamination,
        bool_or(yield_class = 'counted' and yield_enters_on <= today) as yield,
        bool_or(yield_class = 'counted' and yield_enters_on <= today
          and case when container = 'log' then fresh_grams else fresh_grams_by_yield_day end > 0) as cropped,
        bool_or(coalesce(life_class = 'counted', false)) as life
      from batch_outcome join day using (site_id)
      where network_id = ${actor.networkId}::uuid and container = ${container} and apart
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
      group by run_ids, method_key
    )
    select json_agg(json_build_array(run_ids, method_key, contamination, yield, cropped, life))::text as rows from grouped`;
  // The shape is the statement's own.
  const rows = JSON.parse(answer?.rows ?? '[]') as Row[];
  return rows.map(([runIds, methodKey, contamination, given, cropped, life], index) => {
    const flags: readonly (readonly [Measure, boolean])[] = [
      ['contamination', contamination],
      ['yield', given],
      ['cropped', cropped],
      ['life', life],
    ];
    const counted = new Set(flags.flatMap(([measure, counts]) => (counts ? [measure] : [])));
    return { id: `apart ${index}`, runIds, methodKey, counted };
  });
}
