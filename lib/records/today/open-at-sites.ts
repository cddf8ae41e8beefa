import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Open batches of a site; `unlooked` by day those past the end of their window that nobody has looked at since. */
export type OpenBatches = { readonly open: number; readonly unlooked: ReadonlyMap<string, number> };

/**
 * What is open at these sites, or at all that the actor may see: sites with nothing open are left out. Counted from indexes
 * of what is open alone.
 *
 * @param days calendar dates 'YYYY-MM-DD', those that it is today somewhere.
 */
export async function readOpenAtSites(
  { db, actor }: ReadContext,
  sites: readonly string[] | null,
  days: readonly string[],
): Promise<Map<string, OpenBatches>> {
  const network = actor.networkId;
  const asked = sites === null ? null : [...sites];
  const rows = await db.$queryRaw<{ siteId: string; open: number }[]>`
    select site_id as "siteId", count(*)::int as open from batch
    where network_id = ${network}::uuid and closed_on is null and voided_at is null and (${asked}::uuid[] is null or site_id = any (${asked}::uuid[]))
    group by site_id`;
  const late = await db.$queryRaw<{ siteId: string; day: string; batches: number }[]>`
    select site_id as "siteId", day::text, count(*)::int as batches
    from unnest(${[...days]}::date[]) d (day) join batch_outcome on contamination_enters_on <= d.day
    where network_id = ${network}::uuid and contamination_class = 'not-inspected' and closed_on is null and (${asked}::uuid[] is null or site_id = any (${asked}::uuid[]))
    group by site_id, day`;
  const unlooked = new Map<string, Map<string, number>>();
  for (const { siteId, day, batches } of late)
    unlooked.set(siteId, (unlooked.get(siteId) ?? new Map()).set(day, batches));
  return new Map(
    rows.map(({ siteId, open }) => [siteId, { open, unlooked: unlooked.get(siteId) ?? new Map() }]),
  );
}
