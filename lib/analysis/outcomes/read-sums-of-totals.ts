import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';
import type { OutcomeSums } from './outcome-sums';
import { recentParts } from './recent-parts';
import type { SplitPeriod } from './split-period';
import { type NetworkTotal, type RecentPart, type SiteTotal, sumsOfTotals } from './sums-of-totals';

type Lists = { sites: string | null; network: string | null; recent: string | null };

/** The same sums from the totals of sites and of the network, which do not tell materials (or sites) apart. */
export async function readSumsOfTotals(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted & { readonly container: string },
  period: SplitPeriod,
  today: SiteDates,
): Promise<OutcomeSums> {
  const network = actor.networkId;
  const { species, container } = boundsOf(wanted);
  const [years, quarters] = [[...period.years], [...period.quarters]];
  const [lists] = await db.$queryRaw<Lists[]>`
    ${recentParts(network, wanted, period, today)}, spans as materialized (
      select 'year' as span, unnest(${years}::date[]) as starts_on union all select 'quarter', unnest(${quarters}::date[])
    ), site_totals as (
      select json_build_array(t.site_id, t.method_key, sum(t.batches), sum(t.contamination_batches), sum(t.contamination_units),
        sum(t.contaminated), sum(t.contaminated_later), sum(t.lost_clean), sum(t.yield_batches), sum(t.yield_units), sum(t.fresh),
        sum(t.yield_over), sum(t.fresh_later), sum(t.open_units), sum(t.open_unit_days), sum(t.cropped_batches), sum(t.cropped_units),
        sum(t.cropped_over), sum(t.cropped_later), sum(t.cropped_open_units), sum(t.cropped_open_unit_days), sum(t.life_batches),
        sum(t.life_units), sum(t.life_fresh), sum(t.life_dry)) as sum
      from outcome_site_total t join spans using (span, starts_on)
      where t.network_id = ${network}::uuid and t.container = ${container}
        and (${species}::uuid is null or t.species_id = ${species}::uuid)
      group by t.site_id, t.method_key
    ), network_totals as (
      select json_build_array(t.method_key, t.material_key, t.measure, t.class, sum(t.batches), sum(t.units), sum(t.runs),
        sum(t.run_missing), sum(t.trimmed), sum(t.as_picked), sum(t.dry_assumed), sum(t.shared)) as sum
      from outcome_network_total t join spans using (span, starts_on)
      where t.network_id = ${network}::uuid and t.container = ${container}
        and (${species}::uuid is null or t.species_id = ${species}::uuid)
      group by t.method_key, t.material_key, t.measure, t.class
    )
    select (select json_agg(sum)::text from site_totals) as sites, (select json_agg(sum)::text from network_totals) as network,
      (select json_agg(json_build_array(site_id, method_key, material_key, measure, class, batches, units, numerator, denominator,
        later, lost_clean, open_units, open_unit_days, runs, run_missing, trimmed, as_picked, dry_assumed, shared))::text
        from recent) as recent`;
  // The shapes are the statement's own.
  return sumsOfTotals(
    JSON.parse(lists?.sites ?? '[]') as SiteTotal[],
    JSON.parse(lists?.network ?? '[]') as NetworkTotal[],
    JSON.parse(lists?.recent ?? '[]') as RecentPart[],
  );
}
