import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { checkBedLayers } from '../bed-layer/check-bed-layers';
import { insertBedLayers } from '../bed-layer/insert-bed-layers';
import { addBatchChildren } from './batch-children';
import { firstLife, insertBatch } from './insert-batch';
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
  const layers = input.containerKind === 'bed' ? input.layers : [];
  const errors = checkBedLayers(layers);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const prepared = await prepareBatch(context, input, false);
  if (prepared.kind !== 'ok') return prepared;
  const batch = await insertBatch(context, input, prepared.value, firstLife);
  if (batch.kind !== 'ok') return batch;
  await addBatchChildren(context, batch.value, prepared.value);
  await insertBedLayers(context, batch.value, input.inoculatedOn, layers);
  return ok({ id: batch.value.id, code: batch.value.code });
}
