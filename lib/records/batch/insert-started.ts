import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { insertBedLayers } from '../bed-layer/insert-bed-layers';
import type { Coded } from '../fields/made-before';
import { addBatchChildren } from './batch-children';
import { firstLife, insertBatches } from './insert-batch';
import type { PreparedBatch } from './prepare-batch';
import type { startBatchInput } from './start-batch.input';

type Input = z.output<typeof startBatchInput>;

export type ReadyBatch = { readonly input: Input; readonly prepared: PreparedBatch };

/** Layers that a batch begins with; only a bed has any. */
export function firstLayersOf(input: Input) {
  return input.containerKind === 'bed' ? input.layers : [];
}

/** Inserts batches that were judged, with what they are made of; answers in their order. */
export async function insertStarted(
  context: WriteContext,
  ready: readonly ReadyBatch[],
): Promise<Result<Coded>[]> {
  const inserted = await insertBatches(
    context,
    ready.map((one) => ({ ...one, life: firstLife })),
  );
  const made = ready.flatMap((one, at) => {
    const batch = inserted[at];
    return batch?.kind === 'ok' ? [{ ...one, batch: batch.value }] : [];
  });
  await addBatchChildren(context, made);
  for (const { batch, input } of made)
    await insertBedLayers(context, batch, input.inoculatedOn, firstLayersOf(input));
  return inserted.map((one) => (one.kind === 'ok' ? ok({ id: one.value.id, code: one.value.code }) : one));
}
