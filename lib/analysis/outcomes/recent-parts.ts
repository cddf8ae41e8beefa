import { Prisma } from '@/lib/database/generated/client';
import type { SiteDates } from '../comparison/batch-facts';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { SplitPeriod } from './split-period';

/**
 * What has to be added to the sums of whole years and quarters of a period, as a table `recent` to put before a statement:
 * the batches at the period's ends, and those whose day lies ahead at their site taken off again and counted as too
 * young. One row per site, method, material, measure and class; counts may be negative.
 */
export function recentParts(
  network: string,
  wanted: BatchRowsWanted & { readonly container: string },
  { days }: SplitPeriod,
  today: SiteDates,
): Prisma.Sql {
  const { from, to, species, container, material } = boundsOf(wanted);
  const [first = null] = [...today.values()].sort();
  return Prisma.sql`
    with day as materialized (
      select * from unnest(${[...today.keys()]}::uuid[], ${[...today.values()]}::date[]) d (site_id, today)
    ), later_days as materialized (
      select p.* from app.outcome_part p
      where p.network_id = ${network}::uuid and p.container = ${container}
        and (p.contamination_enters_on > ${first}::date or p.yield_enters_on > ${first}::date)
        and p.inoculated_on between ${from}::date and ${to}::date and p.enters_on > ${first}::date
        and (${species}::uuid is null or p.species_id = ${species}::uuid)
        and (${material}::text is null or p.material_key = ${material}::text)
    ), ahead as materialized (
      select p.* from later_days p join day d on d.site_id = p.site_id where p.enters_on > d.today
    ), recent as materialized (
      select p.site_id, p.method_key, p.material_key, p.measure, p.class, count(*) as batches, sum(p.units) as units,
        sum(p.numerator) as numerator, sum(p.denominator) as denominator, sum(p.later) as later, sum(p.lost_clean) as lost_clean,
        sum(p.open_units) as open_units, sum(p.open_unit_days) as open_unit_days,
        count(distinct p.cluster) filter (where not p.apart) as runs, count(*) filter (where p.run_missing) as run_missing,
        count(*) filter (where p.any_trimmed) as trimmed, count(*) filter (where p.any_as_picked) as as_picked,
        count(*) filter (where p.dry_assumed) as dry_assumed, count(*) filter (where p.any_shared) as shared
      from unnest(${days.map(([start]) => start)}::date[], ${days.map(([, end]) => end)}::date[]) e (start, finish)
        join app.outcome_part p on p.network_id = ${network}::uuid and p.container = ${container}
          and p.inoculated_on between e.start and e.finish
      where (${species}::uuid is null or p.species_id = ${species}::uuid)
        and (${material}::text is null or p.material_key = ${material}::text)
      group by p.site_id, p.method_key, p.material_key, p.measure, p.class
      union all
      select site_id, method_key, material_key, measure, class, -count(*), -sum(units), -sum(numerator), -sum(denominator), -sum(later),
        -sum(lost_clean), -sum(open_units), -sum(open_unit_days), -count(distinct cluster) filter (where not apart),
        -count(*) filter (where run_missing), -count(*) filter (where any_trimmed), -count(*) filter (where any_as_picked),
        -count(*) filter (where dry_assumed), -count(*) filter (where any_shared)
      from ahead group by site_id, method_key, material_key, measure, class
      union all
      select site_id, method_key, material_key, measure, 'window-open', count(*), sum(units), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0
      from ahead where measure <> 'cropped' group by site_id, method_key, material_key, measure
    )`;
}
