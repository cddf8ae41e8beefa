import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type SiteView, siteView } from './site-view';

/** The sites that the actor may see and that have not left, by name: all for a coordinator, a member's own for a member. */
export async function listSites({ db }: ReadContext): Promise<SiteView[]> {
  const rows = await db.site.findMany({ where: { voidedAt: null, leftAt: null }, orderBy: { name: 'asc' } });
  return rows.map(siteView);
}
