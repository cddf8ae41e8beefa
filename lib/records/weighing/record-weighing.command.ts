import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import { insertWeighings } from './insert-weighings';
import { prepareWeighing } from './prepare-weighing';
import type { recordWeighingInput } from './weighing.input';

/** Records a harvest on the scale: its mass, the batches it came from and where it went. */
export async function recordWeighing(
  context: WriteContext,
  input: z.output<typeof recordWeighingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor } = context;
  const id = input.id ?? newId();
  const repeat = await db.weighing.findFirst({
    where: { id, createdById: actor.personId },
    include: { lines: { take: 1 } },
  });
  if (repeat) return ok({ id, batchId: repeat.lines[0]?.batchId ?? '' });
  const prepared = await prepareWeighing(context, input, undefined);
  if (prepared.kind !== 'ok') return prepared;
  await insertWeighings(context, [{ id, input, prepared: prepared.value }]);
  return ok({ id, batchId: prepared.value.lines[0]?.batchId ?? '' });
}
