import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkEventDate } from '../batch/check-event-date';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import type { recordLookInput } from './record-look.input';

/** Records that all living units of a batch were looked at and none was newly contaminated. */
export async function recordLook(
  context: WriteContext,
  input: z.output<typeof recordLookInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = input.id ?? newId();
  const repeat = await db.look.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: repeat.batchId });
  const batch = await openBatch(context, input.batchId);
  if (!batch) return notFound;
  const wrongDate = checkEventDate('lookedOn', input.lookedOn, batch, now);
  if (wrongDate) return wrongDate;
  await db.look.create({
    data: {
      networkId: actor.networkId,
      id,
      batchId: batch.id,
      siteId: batch.siteId,
      lookedOn: asDate(input.lookedOn),
      note: input.note,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, batchId: batch.id });
}
