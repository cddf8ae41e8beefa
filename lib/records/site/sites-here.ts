import type { ReadContext } from '@/lib/access/context';

/**
 * A condition on `site_id` of the batches whose sites the actor sees to and that have not left. The row policies decide
 * what is seen; said in the statement as well, an index by site finds a member's batches. Of a coordinator the few sites
 * that have left are named: asked of each batch's site, the database gathers all open batches for the latest of them.
 */
export async function sitesHere({ db, actor }: ReadContext): Promise<{
  readonly siteId?: { readonly in?: string[]; readonly notIn?: string[] };
}> {
  const left = await db.site.findMany({ where: { leftAt: { not: null } }, select: { id: true } });
  const gone = left.map(({ id }) => id);
  if (actor.role !== 'coordinator')
    return { siteId: { in: actor.siteIds.filter((id) => !gone.includes(id)) } };
  return gone.length === 0 ? {} : { siteId: { notIn: gone } };
}
