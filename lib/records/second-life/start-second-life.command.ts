import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { addBatchChildren } from '../batch/batch-children';
import { insertBatch } from '../batch/insert-batch';
import { prepareBatch } from '../batch/prepare-batch';
import { checkBedLayers } from '../bed-layer/check-bed-layers';
import { insertBedLayers } from '../bed-layer/insert-bed-layers';
import { checkSources } from './check-sources';
import { linkSources } from './link-sources';
import type { startSecondLifeInput } from './second-life.input';

/** Starts a batch of its own from units of spent ones; its yield never counts for the first life's BE. */
export async function startSecondLife(
  context: WriteContext,
  input: z.output<typeof startSecondLifeInput>,
): Promise<Result<{ id: string; code: string }>> {
  const { db, actor } = context;
  if (input.id !== null) {
    const repeat = await db.batch.findFirst({ where: { id: input.id, createdById: actor.personId } });
    if (repeat) return ok({ id: repeat.id, code: repeat.code });
  }
  const layers = input.containerKind === 'bed' ? input.layers : [];
  const errors = checkBedLayers(layers);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const sources = await checkSources(context, input, null);
  if (sources.kind !== 'ok') return sources;
  const prepared = await prepareBatch(context, input, true);
  if (prepared.kind !== 'ok') return prepared;
  const batch = await insertBatch(context, {
    ...{ input, prepared: prepared.value },
    life: { secondLife: true, secondLifeWay: input.way },
  });
  if (batch.kind !== 'ok') return batch;
  await addBatchChildren(context, [{ batch: batch.value, prepared: prepared.value }]);
  await insertBedLayers(context, batch.value, input.inoculatedOn, layers);
  await linkSources(context, batch.value, sources.value);
  return ok({ id: batch.value.id, code: batch.value.code });
}
