import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import { prepareWeighing } from './prepare-weighing';
import type { recordWeighingInput } from './weighing.input';
import { addWeighingChildren } from './weighing-children';

/** Records a harvest on the scale: its mass, the batches it came from and where it went. */
export async function recordWeighing(
  context: WriteContext,
  input: z.output<typeof recordWeighingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin } = context;
  const id = input.id ?? newId();
  const repeat = await db.weighing.findFirst({
    where: { id, createdById: actor.personId },
    include: { lines: { take: 1 } },
  });
  if (repeat) return ok({ id, batchId: repeat.lines[0]?.batchId ?? '' });
  const prepared = await prepareWeighing(context, input, undefined);
  if (prepared.kind !== 'ok') return prepared;
  const { siteId, row, lines } = prepared.value;
  await db.weighing.create({
    data: {
      networkId: actor.networkId,
      id,
      siteId,
      ...row,
      ...enteredOf(input),
      origin,
      createdById: actor.personId,
    },
  });
  await addWeighingChildren(context, id, prepared.value);
  return ok({ id, batchId: lines[0]?.batchId ?? '' });
}

type Typed = { readonly text: string; readonly unit: string };

/** What was typed on the scale's form, kept beside the grams it was read as. */
export function enteredOf(input: {
  readonly fresh: { readonly entered: Typed | null };
  readonly tare?: Typed | null;
}) {
  const { fresh, tare } = input;
  if (fresh.entered === null) return {};
  return { entered: tare ? { fresh: fresh.entered, tare } : { fresh: fresh.entered } };
}
