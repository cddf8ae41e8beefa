import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type SiteView, siteView } from './site-view';

/** The sites that the actor may see, by name: all for a coordinator, a member's own for a member. */
export async function listSites({ db }: ReadContext): Promise<(SiteView & { batchCount: number })[]> {
  const rows = await db.site.findMany({
    where: { voidedAt: null },
    orderBy: { name: 'asc' },
    include: { _count: { select: { batches: { where: { voidedAt: null } } } } },
  });
  return rows.map((row) => ({ ...siteView(row), batchCount: row._count.batches }));
}
