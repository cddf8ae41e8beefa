import type { ReadContext } from '@/lib/access/context';
import type { SiteView } from './site-view';

export type CountedSite = SiteView & { readonly batchCount: number };

/**
 * These sites with how many batches each has, voided ones not counted: by what is kept of batches, since counting them
 * takes as long as there are batches.
 */
export async function countBatchesAt(
  { db, actor }: ReadContext,
  sites: readonly SiteView[],
): Promise<CountedSite[]> {
  const network = actor.networkId;
  const counts = await db.$queryRaw<{ siteId: string; batches: number }[]>`
    select t.site_id as "siteId", (t.batches - coalesce(v.batches, 0))::int as batches
    from (select site_id, sum(batches) as batches from outcome_site_total
      where network_id = ${network}::uuid and site_id = any (${sites.map(({ id }) => id)}::uuid[]) and span = 'year'
      group by site_id) t
    left join (select site_id, sum(batches) as batches from outcome_summary
      where network_id = ${network}::uuid and class = 'voided' and measure = 'contamination' and span = 'year'
      group by site_id) v on v.site_id = t.site_id`;
  const batchesAt = new Map(counts.map(({ siteId, batches }) => [siteId, batches]));
  return sites.map((site) => ({ ...site, batchCount: batchesAt.get(site.id) ?? 0 }));
}
