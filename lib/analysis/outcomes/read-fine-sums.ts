import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { CountedSum, LeftOutSum, MarkedSum, OutcomeSums } from './outcome-sums';
import { recentParts } from './recent-parts';
import type { SplitPeriod } from './split-period';

type Lists = {
  counted: string | null;
  marked: string | null;
  left_out: string | null;
  sites: string[] | null;
};

/** The sums from those that tell materials apart: for a member's own sites, and where a material is asked for. */
export async function readFineSums(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted & { readonly container: string },
  period: SplitPeriod,
  today: SiteDates,
): Promise<OutcomeSums> {
  const network = actor.networkId;
  const { species, container, material } = boundsOf(wanted);
  const { years, quarters } = period;
  const [lists] = await db.$queryRaw<Lists[]>`
    ${recentParts(network, wanted, period, today)}, parts as (
      select site_id, method_key, material_key, measure, class, batches, units, numerator, denominator, later, lost_clean,
        open_units, open_unit_days, runs, run_missing, trimmed, as_picked, dry_assumed, shared
      from outcome_summary where network_id = ${network}::uuid and container = ${container}
        and ((span = 'year' and starts_on = any (${[...years]}::date[]))
          or (span = 'quarter' and starts_on = any (${[...quarters]}::date[])))
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
      union all select * from recent
    ), sums as materialized (
      select site_id, method_key, material_key, measure, class, sum(batches) as batches, sum(units) as units,
        sum(numerator) as numerator, sum(denominator) as denominator, sum(later) as later, sum(lost_clean) as lost_clean,
        sum(open_units) as open_units, sum(open_unit_days) as open_unit_days, sum(runs) as runs, sum(run_missing) as run_missing,
        sum(trimmed) as trimmed, sum(as_picked) as as_picked, sum(dry_assumed) as dry_assumed, sum(shared) as shared
      from parts group by site_id, method_key, material_key, measure, class having sum(batches) > 0
    ), counted as (
      select site_id, method_key, measure, json_build_array(site_id, method_key, measure, sum(batches), sum(units), sum(numerator),
        sum(denominator), sum(later), sum(lost_clean), sum(open_units), sum(open_unit_days)) as sum
      from sums where class = 'counted' group by site_id, method_key, measure
    ), marked as (
      select json_build_array(method_key, measure, sum(runs), sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed),
        sum(shared), array_agg(distinct material_key)) as sum
      from sums where class = 'counted' group by method_key, measure
    ), left_out as (
      select json_build_array(method_key, measure, class, sum(batches), sum(units)) as sum
      from sums where class <> 'counted' group by method_key, measure, class
    )
    select (select json_agg(sum)::text from counted) as counted, (select json_agg(sum)::text from marked) as marked,
      (select json_agg(sum)::text from left_out) as left_out,
      (select array_agg(distinct site_id::text) from sums where measure = 'contamination') as sites`;
  // The shapes are the statement's own.
  return {
    counted: JSON.parse(lists?.counted ?? '[]') as CountedSum[],
    marked: JSON.parse(lists?.marked ?? '[]') as MarkedSum[],
    leftOut: JSON.parse(lists?.left_out ?? '[]') as LeftOutSum[],
    sites: lists?.sites ?? [],
  };
}
