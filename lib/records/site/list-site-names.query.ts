import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { mostSitesListed } from '@/lib/base/most-sites-listed';

export type SiteName = { readonly id: string; readonly name: string };

const named = { id: true, name: true } as const;

/**
 * The sites that a filter offers, by name, and one more than are listed where there are too many. The chosen one is always
 * among them, also where it has left and is offered no more: a list must not say "all sites" when it is of one.
 */
export async function listSiteNames({ db }: ReadContext, chosen: string | null): Promise<SiteName[]> {
  const sites = await db.site.findMany({
    where: { voidedAt: null, leftAt: null },
    select: named,
    orderBy: { name: 'asc' },
    take: mostSitesListed + 1,
  });
  if (chosen === null || sites.some(({ id }) => id === chosen)) return sites;
  const own = await db.site.findMany({ where: { id: chosen }, select: named });
  return [...sites, ...own];
}
