import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** What a site has left of a lot: received minus used, whole grams; batches that took some unweighed are counted. */
export type SpawnLeft = {
  readonly lotId: string;
  readonly siteId: string;
  readonly grams: number;
  readonly unweighed: number;
};

/**
 * What is left of spawn lots at each site that the actor may see, of those named where some are, and that recorded a
 * receipt; a site without one is missing, because nobody can tell. Below 0 when more was used than received.
 */
export async function spawnLeft(
  { db }: ReadContext,
  lotIds: readonly string[],
  siteIds?: readonly string[],
): Promise<SpawnLeft[]> {
  const received = await db.spawnReceipt.groupBy({
    by: ['spawnLotId', 'siteId'],
    where: {
      ...{ voidedAt: null, spawnLotId: { in: [...lotIds] } },
      ...(siteIds === undefined ? {} : { siteId: { in: [...siteIds] } }),
    },
    _sum: { grams: true },
  });
  if (received.length === 0) return [];
  const some = (ids: readonly string[]) => ({ in: [...new Set(ids)] });
  const used = await db.spawnShare.groupBy({
    by: ['spawnLotId', 'siteId'],
    where: {
      ...{ voidedAt: null, batch: { voidedAt: null } },
      spawnLotId: some(received.map(({ spawnLotId }) => spawnLotId)),
      siteId: some(received.map(({ siteId }) => siteId)),
    },
    _sum: { grams: true },
    _count: { _all: true, grams: true },
  });
  return received.map(({ spawnLotId, siteId, _sum }) => {
    const share = used.find((one) => one.spawnLotId === spawnLotId && one.siteId === siteId);
    return {
      lotId: spawnLotId,
      siteId,
      grams: (_sum.grams ?? 0) - (share?._sum.grams ?? 0),
      unweighed: share === undefined ? 0 : share._count._all - share._count.grams,
    };
  });
}
