import type { Actor } from '@/lib/access/actor';
import { Prisma } from '@/lib/database/generated/client';

/**
 * The sites whose work the actor sees to, or one of them: null is every site, of a coordinator. The row policies decide
 * what is seen; said in the statement as well, an index by site can be used.
 */
export function tendedSites({ role, siteIds }: Actor, siteId: string | undefined): readonly string[] | null {
  if (role === 'coordinator') return siteId === undefined ? null : [siteId];
  return siteId === undefined ? siteIds : siteIds.filter((own) => own === siteId);
}

/** A further condition of a statement over rows with a `site_id`. */
export function withinSites(sites: readonly string[] | null): Prisma.Sql {
  return sites === null ? Prisma.empty : Prisma.sql`and site_id = any (${[...sites]}::uuid[])`;
}
