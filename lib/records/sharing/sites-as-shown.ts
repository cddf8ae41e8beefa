import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type ShownSite, shownSites } from './shown-sites';

/** The site of a record that the reader may see though the site itself may be out of sight. */
export type SiteAsShown = {
  /** Null for a site out of sight: its id stays where it is. */
  readonly id: string | null;
  readonly shown: ShownSite;
  /** The site's own clock; the network's for a site out of sight, since a clock tells of a place. */
  readonly timeZone: string;
};

const nobody: ShownSite = { kind: 'left-out' };

/** Sites of records that sites lend each other, such as runs, as far as the reader may know them. */
export async function sitesAsShown(
  { db, actor }: ReadContext,
  siteIds: readonly string[],
): Promise<(id: string) => SiteAsShown> {
  const ids = [...new Set(siteIds)];
  const seen = await db.site.findMany({
    where: { id: { in: ids } },
    select: { id: true, name: true, timeZone: true },
  });
  const own = new Map(seen.map((site) => [site.id, site]));
  const out = ids.filter((id) => !own.has(id));
  const others = out.length === 0 ? new Map<string, ShownSite>() : await shownSites({ db }, out);
  return (id) => {
    const site = own.get(id);
    return site
      ? { id, shown: { kind: 'named', name: site.name }, timeZone: site.timeZone }
      : { id: null, shown: others.get(id) ?? nobody, timeZone: actor.networkTimeZone };
  };
}
