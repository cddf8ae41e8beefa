import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import type { placeBatchInput } from './condition.input';
import { openPlace } from './open-place';

/** Says where a batch stands from a day on. Another place on the same day takes the first one's stead. */
export async function placeBatch(
  context: WriteContext,
  { id: wanted, batchId, placeId, placedOn }: z.output<typeof placeBatchInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = wanted ?? newId();
  if (await db.placement.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, batchId });
  await lockBatch(context, batchId);
  const batch = await openBatch(context, batchId);
  if (!batch) return notFound;
  const place = await openPlace(context, placeId);
  if (!place || place.siteId !== batch.siteId) return invalid('placeId', 'not-found');
  const wrongDate = checkEventDate('placedOn', placedOn, batch, now);
  if (wrongDate) return wrongDate;
  await db.placement.updateMany({
    where: { batchId, placedOn: asDate(placedOn), voidedAt: null },
    data: { voidedAt: now, voidReason: 'another place on the same day' },
  });
  await db.placement.create({
    data: {
      networkId: actor.networkId,
      id,
      batchId,
      siteId: batch.siteId,
      placeId,
      placedOn: asDate(placedOn),
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, batchId });
}
