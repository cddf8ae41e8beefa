import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import type { PreparedWeighing } from './prepare-weighing';

/**
 * Writes the batch lines and destination lines of a weighing. A batch that was closed as never picked from has been
 * picked from now: what was said about its missing harvest is taken back, the closing stays.
 */
export async function addWeighingChildren(
  { db, actor, origin }: WriteContext,
  weighingId: string,
  prepared: PreparedWeighing,
): Promise<void> {
  const row = {
    networkId: actor.networkId,
    weighingId,
    siteId: prepared.siteId,
    origin,
    createdById: actor.personId,
  };
  await db.weighingLine.createMany({
    data: prepared.lines.map((line) => ({ ...row, id: newId(), ...line })),
  });
  await db.batch.updateMany({
    where: { id: { in: prepared.lines.map(({ batchId }) => batchId) }, noHarvest: 'none_picked' },
    data: { noHarvest: null },
  });
  await db.weighingDestination.createMany({
    data: prepared.destinations.map((destination) => ({ ...row, id: newId(), ...destination })),
  });
}
