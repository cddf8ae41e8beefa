import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { enteredOf } from './insert-weighings';
import { prepareWeighing } from './prepare-weighing';
import type { correctWeighingInput } from './weighing.input';
import { addWeighingChildren } from './weighing-children';

/** Puts a weighing right: the old lines stay as voided ones, the history keeps the old figures and the reason. */
export async function correctWeighing(
  context: WriteContext,
  input: z.output<typeof correctWeighingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const existing = await db.weighing.findFirst({ where: { id: input.id, voidedAt: null } });
  if (!existing) return notFound;
  if (existing.revision !== input.revision) return { kind: 'conflict', current: existing.revision };
  const prepared = await prepareWeighing(context, input, input.id);
  if (prepared.kind !== 'ok') return prepared;
  if (prepared.value.siteId !== existing.siteId) return notFound;
  const changed = await db.weighing.updateMany({
    where: { id: input.id, revision: input.revision, voidedAt: null },
    data: { ...prepared.value.row, ...enteredOf(input) },
  });
  if (changed.count === 0) return { kind: 'conflict', current: existing.revision + 1 };
  const replaced = {
    data: { voidedAt: now, voidReason: input.reason },
    where: { weighingId: input.id, voidedAt: null },
  };
  await db.weighingLine.updateMany(replaced);
  await db.weighingDestination.updateMany(replaced);
  await addWeighingChildren(context, [{ weighingId: input.id, prepared: prepared.value }]);
  return ok({ id: input.id, batchId: prepared.value.lines[0]?.batchId ?? '' });
}
