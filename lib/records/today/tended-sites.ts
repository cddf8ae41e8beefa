import type { Actor } from '@/lib/access/actor';

/**
 * The sites whose work the actor sees to, or one of them: null is every site, of a coordinator. The row policies decide
 * what is seen; said in the statement as well, an index by site can be used.
 */
export function tendedSites({ role, siteIds }: Actor, siteId: string | undefined): string[] | null {
  if (role === 'coordinator') return siteId === undefined ? null : [siteId];
  return siteIds.filter((own) => siteId === undefined || own === siteId);
}
