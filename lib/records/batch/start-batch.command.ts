import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { addBatchChildren } from './batch-children';
import { insertBatch } from './insert-batch';
import { prepareBatch } from './prepare-batch';
import type { startBatchInput } from './start-batch.input';

/** Starts a batch: units inoculated on one day with one species at one site. */
export async function startBatch(
  context: WriteContext,
  input: z.output<typeof startBatchInput>,
): Promise<Result<{ id: string; code: string }>> {
  const { db, actor } = context;
  if (input.id !== null) {
    const repeat = await db.batch.findFirst({ where: { id: input.id, createdById: actor.personId } });
    if (repeat) return ok({ id: repeat.id, code: repeat.code });
  }
  const prepared = await prepareBatch(context, input, false);
  if (prepared.kind !== 'ok') return prepared;
  const batch = await insertBatch(context, input, prepared.value, false);
  if (batch.kind !== 'ok') return batch;
  await addBatchChildren(context, batch.value, prepared.value);
  return ok({ id: batch.value.id, code: batch.value.code });
}
