import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A site that has left; its name is for the coordinator alone. */
export type LeftSite = { readonly id: string; readonly name: string; readonly withdrawn: boolean };

/** Sites that have left, by name, for the coordinator; nobody's for others. */
export async function listLeftSites({ db, actor }: ReadContext): Promise<LeftSite[]> {
  if (actor.role !== 'coordinator') return [];
  const rows = await db.site.findMany({
    where: { leftAt: { not: null }, voidedAt: null },
    orderBy: { name: 'asc' },
  });
  return rows.map(({ id, name, figuresWithdrawn }) => ({ id, name, withdrawn: figuresWithdrawn }));
}
