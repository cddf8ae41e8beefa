import 'server-only';
import { randomInt } from 'node:crypto';
import type { WriteContext } from '@/lib/access/context';
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

/**
 * Inserts the batch under a code that is free in the whole network. Codes of other sites cannot be read here, so
 * the unique index decides: an insert that meets a taken code adds nothing and the next draw is tried.
 */
export async function insertBatch(
  { db, actor, origin }: WriteContext,
  input: BatchInput & { id: string | null; code: string | null },
  prepared: PreparedBatch,
  life: LifeColumns,
): Promise<Result<{ id: string; siteId: string; code: string }>> {
  const id = input.id ?? newId();
  const wanted = input.code === null ? null : (parseBatchCode(input.code) ?? input.code.toUpperCase());
  for (let draw = 0; draw < draws; draw += 1) {
    const code = wanted ?? drawBatchCode(randomInt, draw < draws / 2 ? 3 : 4);
    const { count } = await db.batch.createMany({
      data: [
        {
          networkId: actor.networkId,
          id,
          code,
          ...batchColumns(input, prepared, actor.personId),
          ...life,
          origin,
          createdById: actor.personId,
        },
      ],
      skipDuplicates: true,
    });
    if (count === 1) return ok({ id, siteId: input.siteId, code });
    if (wanted !== null) return invalid('code', 'code-taken', { code });
  }
  return invalid('', 'already-there');
}
