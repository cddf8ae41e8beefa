import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkEventDate } from '../batch/check-event-date';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import type { correctCheckInput } from './check.input';

/** Corrects what was seen, when, or the note. */
export async function correctCheck(
  context: WriteContext,
  input: z.output<typeof correctCheckInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const { id, revision } = input;
  const check = await db.check.findFirst({ where: { id, voidedAt: null } });
  const batch = check ? await openBatch(context, check.batchId) : undefined;
  if (!check || !batch) return notFound;
  const wrongDate = checkEventDate('checkedOn', input.checkedOn, batch, now);
  if (wrongDate) return wrongDate;
  const { count } = await db.check.updateMany({
    where: { id, revision, voidedAt: null },
    data: { kind: input.kind, checkedOn: asDate(input.checkedOn), note: input.note },
  });
  if (count === 1) return ok({ id, batchId: batch.id });
  const current = await db.check.findFirst({ where: { id, voidedAt: null } });
  return current ? { kind: 'conflict', current: current.revision } : notFound;
}
