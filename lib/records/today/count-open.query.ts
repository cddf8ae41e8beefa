import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { mostLookedAt } from './most-looked-at';
import { readOpenAtSites } from './open-at-sites';
import { rememberedOpen } from './remembered-open';
import { tendedSites } from './tended-sites';

/** What is open at a site; `unlooked` are batches past the end of their window that nobody has looked at since. */
export type OpenAtSite = {
  readonly siteId: string;
  readonly siteName: string;
  readonly open: number;
  readonly unlooked: number;
};

/** `sites` with anything open, those with most unlooked batches first, then by name. */
export type OpenCounts = {
  readonly open: number;
  readonly unlooked: number;
  readonly lookedThrough: number;
  readonly sites: readonly OpenAtSite[];
};

type Site = { readonly siteId: string; readonly siteName: string; readonly timeZone: string };

type Asked = {
  readonly most?: number;
  /** Count at this one alone. */
  readonly siteId?: string | undefined;
};

/**
 * Open batches by site where the actor sees to more than `most`, which are looked through at once; undefined where all of
 * them are.
 */
export async function countOpen(
  context: ReadContext,
  now: Date,
  { most = mostLookedAt, siteId }: Asked = {},
): Promise<OpenCounts | undefined> {
  const { db, actor } = context;
  const network = actor.networkId;
  const tended = tendedSites(actor, undefined);
  const [few] = await db.$queryRaw<{ few: boolean }[]>`
    select count(*) <= ${most} as few from (select from batch
      where network_id = ${network}::uuid and closed_on is null and voided_at is null and (${tended}::uuid[] is null or site_id = any (${tended}::uuid[]))
        and site_id in (select id from site where network_id = ${network}::uuid and left_at is null)
      limit ${most + 1}) b`;
  if (few?.few !== false) return undefined;
  const sites = tendedSites(actor, siteId);
  const places = await db.$queryRaw<Site[]>`
    select id as "siteId", name as "siteName", time_zone as "timeZone" from site
    where network_id = ${network}::uuid and left_at is null and (${sites}::uuid[] is null or id = any (${sites}::uuid[]))`;
  const zones = [...new Set(places.map(({ timeZone }) => timeZone))];
  const today = new Map(zones.map((zone) => [zone, todayInZone(zone, now)]));
  const days = [...new Set(today.values())].sort();
  const openAt =
    sites === null ? await rememberedOpen(context, days) : await readOpenAtSites(context, sites, days);
  const counted = places.flatMap(({ siteId, siteName, timeZone }) => {
    const own = openAt.get(siteId);
    if (own === undefined) return [];
    return [{ siteId, siteName, open: own.open, unlooked: own.unlooked.get(today.get(timeZone) ?? '') ?? 0 }];
  });
  return {
    open: counted.reduce((sum, { open }) => sum + open, 0),
    unlooked: counted.reduce((sum, { unlooked }) => sum + unlooked, 0),
    lookedThrough: most,
    sites: counted.sort((a, b) => b.unlooked - a.unlooked || a.siteName.localeCompare(b.siteName)),
  };
}
