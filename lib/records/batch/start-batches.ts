import 'server-only';
import type { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { ok, type Result } from '@/lib/base/result';
import { checkBedLayers } from '../bed-layer/check-bed-layers';
import { insertBedLayers } from '../bed-layer/insert-bed-layers';
import { addBatchChildren } from './batch-children';
import { firstLife, insertBatches } from './insert-batch';
import { type PreparedBatch, prepareBatches } from './prepare-batch';
import type { startBatchInput } from './start-batch.input';

type Input = z.output<typeof startBatchInput>;
type Started = { readonly id: string; readonly code: string };

const layersOf = (input: Input) => (input.containerKind === 'bed' ? input.layers : []);

/** Those of the inputs' ids under which the actor has started a batch before, with its code. */
async function startedBefore(
  { db, actor }: WriteContext,
  inputs: readonly Input[],
): Promise<ReadonlyMap<string, Started>> {
  const ids = inputs.flatMap(({ id }) => id ?? []);
  if (ids.length === 0) return new Map();
  const rows = await db.batch.findMany({
    where: { id: { in: ids }, createdById: actor.personId },
    select: { id: true, code: true },
  });
  return new Map(rows.map((row) => [row.id, row]));
}

/**
 * Starts several batches, as the form starts one: each is refused, asked about or started for itself, in the order
 * given, in a number of statements that does not grow with theirs.
 */
export async function startBatches(
  context: WriteContext,
  asked: readonly OneOfMany<Input>[],
): Promise<Result<Started>[]> {
  const before = await startedBefore(
    context,
    asked.map(({ input }) => input),
  );
  const judged = await prepareBatches(context, asked, false);
  const answers: Result<Started>[] = [];
  const ready: { readonly at: number; readonly input: Input; readonly prepared: PreparedBatch }[] = [];
  for (const [at, { input }] of asked.entries()) {
    const repeat = input.id === null ? undefined : before.get(input.id);
    const errors = checkBedLayers(layersOf(input));
    const prepared = judged[at];
    if (repeat) answers[at] = ok(repeat);
    else if (errors.length > 0) answers[at] = { kind: 'invalid', errors };
    else if (prepared?.kind === 'ok') ready.push({ at, input, prepared: prepared.value });
    else if (prepared) answers[at] = prepared;
  }
  const rows = await insertBatches(
    context,
    ready.map(({ input, prepared }) => ({ input, prepared, life: firstLife })),
  );
  const made = ready.flatMap((one, index) => {
    const row = rows[index];
    if (row?.kind === 'ok') answers[one.at] = ok({ id: row.value.id, code: row.value.code });
    else if (row) answers[one.at] = row;
    return row?.kind === 'ok' ? [{ ...one, batch: row.value }] : [];
  });
  await addBatchChildren(context, made);
  for (const { batch, input } of made)
    await insertBedLayers(context, batch, input.inoculatedOn, layersOf(input));
  return answers;
}
