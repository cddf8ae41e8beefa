import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkEventDate } from '../batch/check-event-date';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import type { correctLookInput } from './correct-look.input';

/** Corrects the date or note of a look. */
export async function correctLook(
  context: WriteContext,
  input: z.output<typeof correctLookInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const { id, revision } = input;
  const look = await db.look.findFirst({ where: { id, voidedAt: null } });
  const batch = look ? await openBatch(context, look.batchId) : undefined;
  if (!look || !batch) return notFound;
  const wrongDate = checkEventDate('lookedOn', input.lookedOn, batch, now);
  if (wrongDate) return wrongDate;
  const { count } = await db.look.updateMany({
    where: { id, revision, voidedAt: null },
    data: { lookedOn: asDate(input.lookedOn), note: input.note },
  });
  if (count === 1) return ok({ id, batchId: batch.id });
  const current = await db.look.findFirst({ where: { id, voidedAt: null } });
  return current ? { kind: 'conflict', current: current.revision } : notFound;
}
