import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import type { PreparedWeighing } from './prepare-weighing';

type Children = { readonly weighingId: string; readonly prepared: PreparedWeighing };

/**
 * Writes the batch lines and destination lines of weighings. A batch that was closed as never picked from has been
 * picked from now: what was said about its missing harvest is taken back, the closing stays.
 */
export async function addWeighingChildren(
  context: WriteContext,
  weighings: readonly Children[],
): Promise<void> {
  const { db, actor, origin } = context;
  const owner = ({ weighingId, prepared: { siteId } }: Children) => ({
    networkId: actor.networkId,
    ...{ weighingId, siteId, origin },
    createdById: actor.personId,
  });
  await insertRows(
    context,
    'weighing_line',
    weighings.flatMap((one) => one.prepared.lines.map((line) => ({ ...owner(one), id: newId(), ...line }))),
  );
  const picked = weighings.flatMap(({ prepared }) => prepared.lines.map(({ batchId }) => batchId));
  await db.batch.updateMany({
    where: { id: { in: [...new Set(picked)] }, noHarvest: 'none_picked' },
    data: { noHarvest: null },
  });
  await insertRows(
    context,
    'weighing_destination',
    weighings.flatMap((one) =>
      one.prepared.destinations.map((destination) => ({ ...owner(one), id: newId(), ...destination })),
    ),
  );
}
