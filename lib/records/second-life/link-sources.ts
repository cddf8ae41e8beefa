import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import type { CheckedSource } from './check-sources';

/** Links a second life to the batches its units came from. */
export async function linkSources(
  { db, actor, origin }: WriteContext,
  batch: { readonly id: string; readonly siteId: string },
  sources: readonly CheckedSource[],
): Promise<void> {
  await db.secondLifeSource.createMany({
    data: sources.map(({ batchId, siteId, units }) => ({
      networkId: actor.networkId,
      id: newId(),
      batchId: batch.id,
      siteId: batch.siteId,
      sourceBatchId: batchId,
      sourceSiteId: siteId,
      unitsMoved: units,
      origin,
      createdById: actor.personId,
    })),
  });
}
