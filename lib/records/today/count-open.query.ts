import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { mostLookedAt } from './most-looked-at';
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

type Row = OpenAtSite & { readonly timeZone: string };
type Late = { readonly siteId: string; readonly day: string; readonly batches: number };

type Asked = {
  readonly most?: number;
  /** Count at this one alone. */
  readonly siteId?: string | undefined;
};

/**
 * Open batches by site where the actor sees to more than `most`, which are looked through at once; undefined where all of
 * them are. Counted from indexes of what is open alone.
 */
export async function countOpen(
  { db, actor }: ReadContext,
  now: Date,
  { most = mostLookedAt, siteId }: Asked = {},
): Promise<OpenCounts | undefined> {
  const network = actor.networkId;
  const tended = tendedSites(actor, undefined);
  const [few] = await db.$queryRaw<{ few: boolean }[]>`
    select count(*) <= ${most} as few from (select from batch
      where network_id = ${network}::uuid and closed_on is null and voided_at is null and (${tended}::uuid[] is null or site_id = any (${tended}::uuid[]))
        and site_id in (select id from site where network_id = ${network}::uuid and left_at is null)
      limit ${most + 1}) b`;
  if (few?.few !== false) return undefined;
  const sites = tendedSites(actor, siteId);
  const rows = await db.$queryRaw<Row[]>`
    select s.id as "siteId", s.name as "siteName", s.time_zone as "timeZone", b.open, 0 as unlooked
    from (select site_id, count(*)::int as open from batch
      where network_id = ${network}::uuid and closed_on is null and voided_at is null and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[])) group by site_id) b
    join site s on s.network_id = ${network}::uuid and s.id = b.site_id and s.left_at is null`;
  const zones = [...new Set(rows.map(({ timeZone }) => timeZone))];
  const today = new Map(zones.map((zone) => [zone, todayInZone(zone, now)]));
  const days = [...new Set(today.values())].sort();
  const late = await db.$queryRaw<Late[]>`
    select site_id as "siteId", day::text, count(*)::int as batches
    from unnest(${days}::date[]) d (day) join batch_outcome on contamination_enters_on <= d.day
    where network_id = ${network}::uuid and contamination_class = 'not-inspected' and closed_on is null and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[]))
    group by site_id, day`;
  const lateAt = new Map(late.map(({ siteId, day, batches }) => [`${siteId} ${day}`, batches]));
  const counted = rows.map(({ siteId, siteName, timeZone, open }) => {
    return { siteId, siteName, open, unlooked: lateAt.get(`${siteId} ${today.get(timeZone)}`) ?? 0 };
  });
  return {
    open: counted.reduce((sum, { open }) => sum + open, 0),
    unlooked: counted.reduce((sum, { unlooked }) => sum + unlooked, 0),
    lookedThrough: most,
    sites: counted.sort((a, b) => b.unlooked - a.unlooked || a.siteName.localeCompare(b.siteName)),
  };
}
