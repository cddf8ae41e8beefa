import 'server-only';
import { randomInt } from 'node:crypto';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { SecondLifeWay } from '@/lib/database/generated/enums';
import { drawBatchCode, parseBatchCode } from '@/lib/growing/batch-code';
import { insertCoded } from '../fields/insert-coded';
import { batchColumns } from './batch-columns';
import type { BatchInput } from './batch-fields.input';
import type { PreparedBatch } from './prepare-batch';

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

/** The one form in which a code that somebody wrote is stored. */
export function storedBatchCode(code: string): string {
  return parseBatchCode(code) ?? code.toUpperCase();
}

export async function insertBatch(context: WriteContext, batch: New): Promise<Result<InsertedBatch>> {
  const [inserted] = await insertBatches(context, [batch]);
  return inserted ?? invalid('', 'already-there');
}

/** Inserts batches, each under its code or a drawn one, in their order. */
export async function insertBatches(
  context: WriteContext,
  batches: readonly New[],
): Promise<Result<InsertedBatch>[]> {
  const { actor, origin } = context;
  const inserted = await insertCoded(
    context,
    'batch',
    batches.map(({ input, prepared, life }) => {
      const id = input.id ?? newId();
      return {
        id,
        wanted: input.code === null ? null : storedBatchCode(input.code),
        row: (code: string) => ({
          networkId: actor.networkId,
          ...{ id, code, ...batchColumns(input, prepared, actor.personId), ...life },
          ...{ origin, createdById: actor.personId },
        }),
      };
    }),
    (again) => drawBatchCode(randomInt, again ? 4 : 3),
  );
  return inserted.map((answer, at) =>
    answer.kind === 'ok' ? ok({ ...answer.value, siteId: batches[at]?.input.siteId ?? '' }) : answer,
  );
}
