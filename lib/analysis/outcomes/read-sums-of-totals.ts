import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { OutcomeSums } from './outcome-sums';
import type { SplitPeriod } from './split-period';
import {
  type NearClass,
  type NearRuns,
  type NetworkTotal,
  type SiteTotal,
  sumsOfTotals,
} from './sums-of-totals';

type Lists = {
  sites: string | null;
  near_sites: string | null;
  network: string | null;
  near: string | null;
  runs: string | null;
};

/**
 * The same sums from the totals of sites and of the network. `near` are the batches that these do not hold as they count
 * today: those at the period's ends (`inside`), and those whose day lies ahead at their site (`young`, `unripe`).
 */
export async function readSumsOfTotals(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted & { readonly container: string },
  period: SplitPeriod,
  today: SiteDates,
): Promise<OutcomeSums> {
  const network = actor.networkId;
  const { from, to, species, container } = boundsOf(wanted);
  const [years, quarters] = [[...period.years], [...period.quarters]];
  const [[start, end] = [null, null], [laterStart, laterEnd] = [null, null]] = period.days;
  const [first = null] = [...today.values()].sort();
  const [lists] = await db.$queryRaw<Lists[]>`
    with day as materialized (
      select * from unnest(${[...today.keys()]}::uuid[], ${[...today.values()]}::date[]) d (site_id, today)
    ), spans as materialized (
      select 'year' as span, unnest(${years}::date[]) as starts_on union all select 'quarter', unnest(${quarters}::date[])
    ), found as materialized (
      select o.*, (coalesce(o.inoculated_on between ${start}::date and ${end}::date, false)
          or coalesce(o.inoculated_on between ${laterStart}::date and ${laterEnd}::date, false))::int as inside,
        coalesce(o.contamination_enters_on > day.today, false)::int as young,
        coalesce(o.yield_enters_on > day.today, false)::int as unripe
      from app.outcome_row o join day using (site_id)
      where o.network_id = ${network}::uuid and o.container = ${container} and o.inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or o.species_id = ${species}::uuid)
        and (o.contamination_enters_on > ${first}::date or o.yield_enters_on > ${first}::date
          or o.inoculated_on between ${start}::date and ${end}::date
          or o.inoculated_on between ${laterStart}::date and ${laterEnd}::date)
    ), near as materialized (
      select *, case contamination_class when 'counted' then inside - young else 0 end as c,
        case yield_class when 'counted' then inside - unripe else 0 end as y,
        case when cropped then inside - unripe else 0 end as k, case life_class when 'counted' then inside else 0 end as l
      from found where inside + young + unripe > 0
    ), near_sites as (
      select json_build_array(site_id, method_key, sum(inside), sum(c), sum(c * units), sum(c * contaminated), sum(c * contaminated_later),
        sum(c * lost_clean), sum(y), sum(y * units), sum(y * fresh), sum(y * yield_over), sum(y * fresh_later), sum(y * open_units),
        sum(y * open_unit_days), sum(k), sum(k * units), sum(k * yield_over), sum(k * fresh_later), sum(k * open_units),
        sum(k * open_unit_days), sum(l), sum(l * units), sum(l * life_fresh), sum(l * life_dry)) as sum
      from near group by site_id, method_key
    ), near_classes as (
      select json_build_array(method_key, material_key, contamination_class, yield_class, cropped, life_class,
        sum(inside), sum(inside * units), sum(young), sum(young * units), sum(unripe), sum(unripe * units),
        sum(inside - young) filter (where run_missing), sum(inside - young) filter (where any_trimmed),
        sum(inside - young) filter (where any_as_picked), sum(inside - young) filter (where dry_assumed),
        sum(inside - young) filter (where any_shared),
        sum(inside - unripe) filter (where run_missing), sum(inside - unripe) filter (where any_trimmed),
        sum(inside - unripe) filter (where any_as_picked), sum(inside - unripe) filter (where dry_assumed),
        sum(inside - unripe) filter (where any_shared),
        sum(inside) filter (where run_missing), sum(inside) filter (where any_trimmed), sum(inside) filter (where any_as_picked),
        sum(inside) filter (where dry_assumed), sum(inside) filter (where any_shared)) as sum
      from near group by method_key, material_key, contamination_class, yield_class, cropped, life_class
    ), near_clusters as (
      select method_key, max(inside) filter (where contamination_class = 'counted') as c, max(young) filter (where contamination_class = 'counted') as cy,
        max(inside) filter (where yield_class = 'counted') as y, max(unripe) filter (where yield_class = 'counted') as yu,
        max(inside) filter (where cropped) as k, max(unripe) filter (where cropped) as ku, max(inside) filter (where life_class = 'counted') as l
      from near where not apart group by method_key, cluster
    ), near_runs as (
      select json_build_array(method_key, coalesce(sum(c), 0) - coalesce(sum(cy), 0), coalesce(sum(y), 0) - coalesce(sum(yu), 0),
        coalesce(sum(k), 0) - coalesce(sum(ku), 0), coalesce(sum(l), 0)) as sum
      from near_clusters group by method_key
    ), site_totals as (
      select json_build_array(site_id, method_key, sum(batches), sum(contamination_batches), sum(contamination_units),
        sum(contaminated), sum(contaminated_later), sum(lost_clean), sum(yield_batches), sum(yield_units), sum(fresh),
        sum(yield_over), sum(fresh_later), sum(open_units), sum(open_unit_days), sum(cropped_batches), sum(cropped_units),
        sum(cropped_over), sum(cropped_later), sum(cropped_open_units), sum(cropped_open_unit_days), sum(life_batches),
        sum(life_units), sum(life_fresh), sum(life_dry)) as sum
      from outcome_site_total join spans using (span, starts_on)
      where network_id = ${network}::uuid and container = ${container} and (${species}::uuid is null or species_id = ${species}::uuid)
      group by site_id, method_key
    ), network_totals as (
      select json_build_array(method_key, material_key, measure, class, sum(batches), sum(units), sum(runs),
        sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed), sum(shared)) as sum
      from outcome_network_total join spans using (span, starts_on)
      where network_id = ${network}::uuid and container = ${container} and (${species}::uuid is null or species_id = ${species}::uuid)
      group by method_key, material_key, measure, class
    )
    select (select json_agg(sum)::text from site_totals) as sites, (select json_agg(sum)::text from near_sites) as near_sites,
      (select json_agg(sum)::text from network_totals) as network, (select json_agg(sum)::text from near_classes) as near,
      (select json_agg(sum)::text from near_runs) as runs`;
  // The shapes are the statement's own.
  return sumsOfTotals({
    sites: [lists?.sites, lists?.near_sites].flatMap((list) => JSON.parse(list ?? '[]') as SiteTotal[]),
    network: JSON.parse(lists?.network ?? '[]') as NetworkTotal[],
    near: JSON.parse(lists?.near ?? '[]') as NearClass[],
    runs: JSON.parse(lists?.runs ?? '[]') as NearRuns[],
  });
}
