import 'server-only';
import { randomInt } from 'node:crypto';
import type { WriteContext } from '@/lib/access/context';
import { insertRowsUnlessThere } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { SecondLifeWay } from '@/lib/database/generated/enums';
import { drawBatchCode, parseBatchCode } from '@/lib/growing/batch-code';
import { batchColumns } from './batch-columns';
import type { BatchInput } from './batch-fields.input';
import type { PreparedBatch } from './prepare-batch';

const draws = 12;

/** Which life of its substrate a batch is. */
export type LifeColumns = { readonly secondLife: boolean; readonly secondLifeWay: SecondLifeWay | null };

export const firstLife: LifeColumns = { secondLife: false, secondLifeWay: null };

type New = {
  readonly input: BatchInput & { readonly id: string | null; readonly code: string | null };
  readonly prepared: PreparedBatch;
  readonly life: LifeColumns;
};

/** A batch that was inserted, under the code that it got. */
export type InsertedBatch = { readonly id: string; readonly siteId: string; readonly code: string };

export async function insertBatch(context: WriteContext, batch: New): Promise<Result<InsertedBatch>> {
  const [inserted] = await insertBatches(context, [batch]);
  return inserted ?? invalid('', 'already-there');
}

/**
 * Inserts batches, each under a code that is free in the whole network. Codes of other sites cannot be read here, so
 * the unique index decides: a row that meets a taken code is not inserted, and where it was drawn the next draw is
 * tried. Answers in the order of the batches; of two that want one code the first gets it.
 */
export async function insertBatches(
  context: WriteContext,
  batches: readonly New[],
): Promise<Result<InsertedBatch>[]> {
  const { actor, origin } = context;
  const answers: Result<InsertedBatch>[] = batches.map(() => invalid('', 'already-there'));
  let open = batches.map((batch, at) => ({
    ...{ at, batch, id: batch.input.id ?? newId() },
    wanted:
      batch.input.code === null ? null : (parseBatchCode(batch.input.code) ?? batch.input.code.toUpperCase()),
  }));
  for (let draw = 0; draw < draws && open.length > 0; draw += 1) {
    const tried = open.map((one) => ({
      ...one,
      code: one.wanted ?? drawBatchCode(randomInt, draw < draws / 2 ? 3 : 4),
    }));
    const inserted = await insertRowsUnlessThere(
      context,
      'batch',
      tried.map(({ id, code, batch: { input, prepared, life } }) => ({
        networkId: actor.networkId,
        ...{ id, code, ...batchColumns(input, prepared, actor.personId), ...life },
        ...{ origin, createdById: actor.personId },
      })),
    );
    for (const { at, id, code, wanted, batch } of tried) {
      if (inserted.has(id)) answers[at] = ok({ id, siteId: batch.input.siteId, code });
      else if (wanted !== null) answers[at] = invalid('code', 'code-taken', { code });
    }
    open = open.filter(({ id, wanted }) => wanted === null && !inserted.has(id));
  }
  return answers;
}
