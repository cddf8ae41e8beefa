import 'server-only';
import type { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import type { recordFindingInput } from './finding.input';
import { foundBatches } from './found-batches';
import { insertFindings, type ReadyFinding } from './insert-findings';
import { afterFinding, judgeFinding } from './judge-finding';

type Input = z.output<typeof recordFindingInput>;
type Recorded = { readonly id: string; readonly batchId: string };

/** Those of the inputs' ids under which the actor has recorded a finding before, with its batch. */
async function recordedBefore(
  { db, actor }: WriteContext,
  inputs: readonly Input[],
): Promise<ReadonlyMap<string, Recorded>> {
  const ids = inputs.flatMap(({ id }) => id ?? []);
  if (ids.length === 0) return new Map();
  const rows = await db.finding.findMany({
    where: { id: { in: ids }, createdById: actor.personId },
    select: { id: true, batchId: true },
  });
  return new Map(rows.map((row) => [row.id, row]));
}

/**
 * Records several findings, as the form records one: each is refused, asked about or recorded for itself, in the order
 * given, by what those before it left. Batches that a finding touches are looked up and held once.
 */
export async function recordFindings(
  context: WriteContext,
  asked: readonly OneOfMany<Input>[],
): Promise<Result<Recorded>[]> {
  const { now } = context;
  const before = await recordedBefore(
    context,
    asked.map(({ input }) => input),
  );
  const isRepeat = ({ id }: Input) => id !== null && before.has(id);
  const fresh = asked.flatMap(({ input }) => (isRepeat(input) ? [] : [input.batchId]));
  const batches = await foundBatches(context, [...new Set(fresh)]);
  const ready: ReadyFinding[] = [];
  const answers = asked.map(({ input, confirmed }): Result<Recorded> => {
    const repeat = input.id === null ? undefined : before.get(input.id);
    if (repeat) return ok(repeat);
    const batch = batches.get(input.batchId);
    const failure = judgeFinding({ now, confirmed }, input, batch);
    if (failure || !batch) return failure ?? { kind: 'not-found' };
    batches.set(batch.id, afterFinding(batch, input));
    const id = input.id ?? newId();
    ready.push({ id, batchId: batch.id, siteId: batch.siteId, input });
    return ok({ id, batchId: batch.id });
  });
  await insertFindings(context, ready);
  return answers;
}
