import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { daysAtSites } from './days-at-sites';
import type { OutcomeSums } from './outcome-sums';
import { type OutcomesWanted, outcomeBounds } from './outcomes-wanted';
import { type SiteColumns, siteColumns } from './site-columns';
import type { SplitPeriod } from './split-period';
import {
  type MethodTotal,
  type NearClass,
  type NearRuns,
  type NetworkTotal,
  sumsOfTotals,
} from './sums-of-totals';

type Lists = {
  methods: string | null;
  network: string | null;
  near: string | null;
  runs: string | null;
} & SiteColumns;

/**
 * The same sums from the totals of sites and of the network. `near` are the batches that these do not hold as they count
 * today: those at the period's ends (`inside`), and those whose day lies ahead at their site (`young`, `unripe`). Sums are
 * taken in double precision, exact for whole numbers up to 2^53 and several times faster than in numeric.
 */
export async function readSumsOfTotals(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
  period: SplitPeriod,
  today: SiteDates,
): Promise<OutcomeSums> {
  const network = actor.networkId;
  const { from, to, species, container, method } = outcomeBounds(wanted);
  const [years, quarters] = [[...period.years], [...period.quarters]];
  const [[start, end] = [null, null], [laterStart, laterEnd] = [null, null]] = period.days;
  const { first, later, twoLater } = daysAtSites(today);
  const [lists] = await db.$queryRaw<Lists[]>`
    with spans as materialized (
      select 'year' as span, unnest(${years}::date[]) as starts_on union all select 'quarter', unnest(${quarters}::date[])
    ), near as materialized (
      select *, case contamination_class when 'counted' then inside - young else 0 end as c,
        case yield_class when 'counted' then inside - unripe else 0 end as y,
        case when cropped then inside - unripe else 0 end as k, case life_class when 'counted' then inside else 0 end as l
      from (select o.*, (coalesce(o.inoculated_on between ${start}::date and ${end}::date, false)
          or coalesce(o.inoculated_on between ${laterStart}::date and ${laterEnd}::date, false))::int as inside,
        coalesce(o.contamination_enters_on - (o.site_id = any (${later}::uuid[]))::int - (o.site_id = any (${twoLater}::uuid[]))::int
          > ${first}::date, false)::int as young,
        coalesce(o.yield_enters_on - (o.site_id = any (${later}::uuid[]))::int - (o.site_id = any (${twoLater}::uuid[]))::int
          > ${first}::date, false)::int as unripe
      from app.outcome_row o
      where o.network_id = ${network}::uuid and o.container = ${container} and o.inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or o.species_id = ${species}::uuid) and (${method}::text is null or o.method_key = ${method}::text)
        and (o.contamination_enters_on > ${first}::date or o.yield_enters_on > ${first}::date
          or o.inoculated_on between ${start}::date and ${end}::date
          or o.inoculated_on between ${laterStart}::date and ${laterEnd}::date)
      offset 0) found
      where inside + young + unripe > 0
    ), parts as (
      select site_id, method_key, batches::float8 as batches, contamination_batches::float8 as c, contamination_units::float8 as cu,
        contaminated::float8 as ca, contaminated_later::float8 as cl, lost_clean::float8 as lc, yield_batches::float8 as y,
        yield_units::float8 as yu, fresh::float8 as f, yield_over::float8 as yo, fresh_later::float8 as yl, cropped_batches::float8 as k,
        cropped_units::float8 as ku, cropped_over::float8 as ko, cropped_later::float8 as kl, open_units::float8 as ou,
        open_unit_days::float8 as od, cropped_open_units::float8 as ko_units, cropped_open_unit_days::float8 as ko_days,
        life_batches::float8 as l, life_units::float8 as lu, life_fresh::float8 as lf, life_dry::float8 as ld
      from outcome_site_total join spans using (span, starts_on)
      where network_id = ${network}::uuid and container = ${container}
        and (${species}::uuid is null or species_id = ${species}::uuid) and (${method}::text is null or method_key = ${method}::text)
      union all
      select site_id, method_key, inside, c, c * units, c * contaminated, c * contaminated_later, c * lost_clean, y, y * units, y * fresh,
        y * coalesce(yield_over, 0), y * fresh_later, k, k * units, k * coalesce(yield_over, 0), k * fresh_later, y * open_units, y * open_unit_days,
        k * open_units, k * open_unit_days, l, l * units, l * life_fresh, l * coalesce(life_dry, 0)
      from near
    ), sums as (
      select site_id, method_key, sum(batches) as batches, sum(c) as c, sum(cu) as cu, sum(ca) as ca, sum(cl) as cl, sum(lc) as lc,
        sum(y) as y, sum(yu) as yu, sum(f) as f, sum(yo) as yo, sum(yl) as yl, sum(k) as k, sum(ku) as ku, sum(ko) as ko, sum(kl) as kl,
        sum(ou) as ou, sum(od) as od, sum(ko_units) as ko_units, sum(ko_days) as ko_days,
        sum(l) as l, sum(lu) as lu, sum(lf) as lf, sum(ld) as ld
      from parts group by site_id, method_key
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
    ), network_totals as (
      select json_build_array(method_key, material_key, measure, class, sum(batches), sum(units), sum(runs),
        sum(run_missing), sum(trimmed), sum(as_picked), sum(dry_assumed), sum(shared)) as sum
      from outcome_network_total join spans using (span, starts_on)
      where network_id = ${network}::uuid and container = ${container}
        and (${species}::uuid is null or species_id = ${species}::uuid) and (${method}::text is null or method_key = ${method}::text)
      group by method_key, material_key, measure, class
    ), sites as (select *, ${container} = 'log' as log from sums)
    select array_agg(site_id)::text as sites, array_agg(method_key)::text as keys, array_agg(batches)::text as batches,
      array_agg(cu)::text as units, array_agg(ca)::text as contaminated, array_agg(cl)::text as contaminated_later,
      array_agg(f)::text as fresh, array_agg(yo)::text as yield_over, array_agg(ko)::text as cropped_over,
      (array_agg(ou) filter (where log))::text as open_units, (array_agg(od) filter (where log))::text as open_unit_days,
      (array_agg(ko_units) filter (where log))::text as cropped_open_units, (array_agg(ko_days) filter (where log))::text as cropped_open_unit_days,
      (array_agg(lf) filter (where log))::text as life_fresh, (array_agg(ld) filter (where log))::text as life_dry,
      (select json_agg(method)::text from (
        select json_build_array(method_key, sum(c), sum(cu), sum(cl), sum(lc), sum(y), sum(yu), sum(yl), sum(k), sum(ku), sum(kl),
          sum(l), sum(lu)) as method from sums group by method_key) m) as methods,
      (select json_agg(sum)::text from network_totals) as network, (select json_agg(sum)::text from near_classes) as near,
      (select json_agg(sum)::text from near_runs) as runs
    from sites`;
  // The shapes are the statement's own.
  return sumsOfTotals({
    sites: siteColumns(lists),
    methods: JSON.parse(lists?.methods ?? '[]') as MethodTotal[],
    network: JSON.parse(lists?.network ?? '[]') as NetworkTotal[],
    near: JSON.parse(lists?.near ?? '[]') as NearClass[],
    runs: JSON.parse(lists?.runs ?? '[]') as NearRuns[],
  });
}
