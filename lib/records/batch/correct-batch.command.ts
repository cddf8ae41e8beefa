import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { addBatchChildren, voidBatchChildren } from './batch-children';
import { batchColumns } from './batch-columns';
import { checkCorrection } from './check-correction';
import type { correctBatchInput } from './correct-batch.input';
import { prepareBatch } from './prepare-batch';

/**
 * Corrects a batch as a whole: everything typed at its start is replaced, the old stays in the history.
 *
 * @param life a second life has rules of its own besides (`second-life/correct-second-life`), and is not found as a first one.
 */
export async function correctBatch(
  context: WriteContext,
  input: z.output<typeof correctBatchInput>,
  life: 'first' | 'second' = 'first',
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  const { id, revision, reason } = input;
  const batch = await db.batch.findFirst({ where: { id, voidedAt: null } });
  if (!batch || batch.secondLife !== (life === 'second')) return notFound;
  if (batch.revision !== revision) return { kind: 'conflict', current: batch.revision };
  const errors = await checkCorrection(context, batch, input);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const filledFrom = await db.batchComponent.findMany({
    where: { batchId: id, voidedAt: null },
    select: { treatmentRunId: true },
  });
  const knownRuns = new Set(filledFrom.flatMap(({ treatmentRunId }) => treatmentRunId ?? []));
  const prepared = await prepareBatch(context, input, batch.secondLife, knownRuns);
  if (prepared.kind !== 'ok') return prepared;
  const { startedById, ...columns } = batchColumns(input, prepared.value, actor.personId);
  await voidBatchChildren(context, id, reason);
  const { count } = await db.batch.updateMany({
    where: { id, revision, voidedAt: null },
    data: { ...columns, ...(input.startedById === null ? {} : { startedById }) },
  });
  if (count === 0) return { kind: 'conflict', current: revision + 1 };
  await addBatchChildren(context, [{ batch: { id, siteId: input.siteId }, prepared: prepared.value }]);
  return ok({ id });
}
