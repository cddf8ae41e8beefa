import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { daysAtSites } from './days-at-sites';
import type { AmountSum, CountedSum, LeftOutSum, MarkedSum, OutcomeSums } from './outcome-sums';
import { type OutcomesWanted, outcomeBounds } from './outcomes-wanted';
import type { SplitPeriod } from './split-period';

type Lists = {
  counted: string | null;
  amounts: string | null;
  marked: string | null;
  left_out: string | null;
  sites: string[] | null;
};

/**
 * The sums from those that tell materials apart: for a member's own sites, and where a material is asked for. `recent` are
 * the batches at the period's ends, and those whose day lies ahead at their site taken off again and counted as too
 * young; their counts may be negative. Sums are taken in double precision, as those of totals are.
 */
export async function readFineSums(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
  period: SplitPeriod,
  today: SiteDates,
): Promise<OutcomeSums> {
  const network = actor.networkId;
  const { from, to, species, container, material, method } = outcomeBounds(wanted);
  const { years, quarters, days } = period;
  const { first, later, twoLater } = daysAtSites(today);
  const [lists] = await db.$queryRaw<Lists[]>`
    with later_days as materialized (
      select p.* from app.outcome_part p
      where p.network_id = ${network}::uuid and p.container = ${container}
        and (p.contamination_enters_on > ${first}::date or p.yield_enters_on > ${first}::date)
        and p.inoculated_on between ${from}::date and ${to}::date and p.enters_on > ${first}::date
        and (${species}::uuid is null or p.species_id = ${species}::uuid)
        and (${material}::text is null or p.material_key = ${material}::text) and (${method}::text is null or p.method_key = ${method}::text)
    ), ahead as materialized (
      select p.* from later_days p
      where p.enters_on - (p.site_id = any (${later}::uuid[]))::int - (p.site_id = any (${twoLater}::uuid[]))::int > ${first}::date
    ), recent as materialized (
      select p.site_id, p.method_key, p.material_key, p.measure, p.class, count(*) as batches, sum(p.units::float8) as units,
        sum(p.numerator::float8) as numerator, sum(p.denominator::float8) as denominator, sum(p.later::float8) as later, sum(p.lost_clean::float8) as lost_clean,
        sum(p.open_units::float8) as open_units, sum(p.open_unit_days::float8) as open_unit_days,
        count(distinct p.cluster) filter (where not p.apart) as runs, count(*) filter (where p.run_missing) as run_missing,
        count(*) filter (where p.any_trimmed) as trimmed, count(*) filter (where p.any_as_picked) as as_picked,
        count(*) filter (where p.dry_assumed) as dry_assumed, count(*) filter (where p.any_shared) as shared
      from unnest(${days.map(([start]) => start)}::date[], ${days.map(([, end]) => end)}::date[]) e (start, finish)
        join app.outcome_part p on p.network_id = ${network}::uuid and p.container = ${container}
          and p.inoculated_on between e.start and e.finish
      where (${species}::uuid is null or p.species_id = ${species}::uuid)
        and (${material}::text is null or p.material_key = ${material}::text) and (${method}::text is null or p.method_key = ${method}::text)
      group by p.site_id, p.method_key, p.material_key, p.measure, p.class
      union all
      select site_id, method_key, material_key, measure, class, -count(*), -sum(units::float8), -sum(numerator::float8), -sum(denominator::float8), -sum(later::float8),
        -sum(lost_clean::float8), -sum(open_units::float8), -sum(open_unit_days::float8), -count(distinct cluster) filter (where not apart),
        -count(*) filter (where run_missing), -count(*) filter (where any_trimmed), -count(*) filter (where any_as_picked),
        -count(*) filter (where dry_assumed), -count(*) filter (where any_shared)
      from ahead group by site_id, method_key, material_key, measure, class
      union all
      select site_id, method_key, material_key, measure, 'window-open', count(*), sum(units::float8), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0
      from ahead where measure <> 'cropped' group by site_id, method_key, material_key, measure
    ), parts as (
      select site_id, method_key, material_key, measure, class, batches::float8 as batches, units::float8 as units,
        numerator::float8 as numerator, denominator::float8 as denominator, later::float8 as later, lost_clean::float8 as lost_clean,
        open_units::float8 as open_units, open_unit_days::float8 as open_unit_days, runs::float8 as runs, run_missing::float8 as run_missing,
        trimmed::float8 as trimmed, as_picked::float8 as as_picked, dry_assumed::float8 as dry_assumed, shared::float8 as shared
      from outcome_summary where network_id = ${network}::uuid and container = ${container}
        and ((span = 'year' and starts_on = any (${[...years]}::date[]))
          or (span = 'quarter' and starts_on = any (${[...quarters]}::date[])))
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text) and (${method}::text is null or method_key = ${method}::text)
      union all select * from recent
    ), sums as materialized (
      select site_id, method_key, material_key, measure, class, sum(batches) as batches, sum(units) as units,
        sum(numerator) as numerator, sum(denominator) as denominator, sum(later) as later, sum(lost_clean) as lost_clean,
        sum(open_units) as open_units, sum(open_unit_days) as open_unit_days, sum(runs) as runs, sum(run_missing) as run_missing,
        sum(trimmed) as trimmed, sum(as_picked) as as_picked, sum(dry_assumed) as dry_assumed, sum(shared) as shared
      from parts group by site_id, method_key, material_key, measure, class having sum(batches) > 0
    ), counted as (
      select site_id, method_key, measure, json_build_array(site_id, method_key, measure, sum(numerator), sum(denominator), sum(later),
        sum(open_units), sum(open_unit_days)) as sum
      from sums where class = 'counted' group by site_id, method_key, measure
    ), amounts as (
      select json_build_array(method_key, measure, sum(batches), sum(units), sum(later), sum(lost_clean)) as sum
      from sums where class = 'counted' group by method_key, measure
    ), marked as (
      select json_build_array(method_key, measure, sum(runs), sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed),
        sum(shared), array_agg(distinct material_key)) as sum
      from sums where class = 'counted' group by method_key, measure
    ), left_out as (
      select json_build_array(method_key, measure, class, sum(batches), sum(units)) as sum
      from sums where class <> 'counted' group by method_key, measure, class
    )
    select (select json_agg(sum)::text from counted) as counted, (select json_agg(sum)::text from amounts) as amounts,
      (select json_agg(sum)::text from marked) as marked,
      (select json_agg(sum)::text from left_out) as left_out,
      (select array_agg(distinct site_id::text) from sums where measure = 'contamination') as sites`;
  // The shapes are the statement's own.
  return {
    counted: JSON.parse(lists?.counted ?? '[]') as CountedSum[],
    amounts: JSON.parse(lists?.amounts ?? '[]') as AmountSum[],
    marked: JSON.parse(lists?.marked ?? '[]') as MarkedSum[],
    leftOut: JSON.parse(lists?.left_out ?? '[]') as LeftOutSum[],
    sites: lists?.sites ?? [],
  };
}
