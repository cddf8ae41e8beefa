import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { listSites } from './list-sites.query';
import type { SiteView } from './site-view';

/**
 * The same sites with how many batches each has, voided ones not counted: by what is kept of batches, since counting
 * them takes as long as there are batches.
 */
export async function listCountedSites(
  context: ReadContext,
): Promise<(SiteView & { readonly batchCount: number })[]> {
  const sites = await listSites(context);
  const network = context.actor.networkId;
  const counts = await context.db.$queryRaw<{ siteId: string; batches: number }[]>`
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
