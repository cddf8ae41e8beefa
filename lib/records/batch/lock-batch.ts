import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Holds the batch's row until the transaction ends, so that two phones cannot both take its last unit. */
export async function lockBatch({ db, actor }: ReadContext, batchId: string): Promise<void> {
  await db.$queryRaw`select 1 from batch where network_id = ${actor.networkId}::uuid and id = ${batchId}::uuid for update`;
}

/**
 * Holds the rows of batches against others who count their units; a harvest, which refers to their keys alone, need not
 * wait. Always in one order, so that two who hold some of them do not wait for each other.
 */
export async function lockUnitsOfBatches(
  { db, actor }: ReadContext,
  batchIds: readonly string[],
): Promise<void> {
  await db.$queryRaw`select 1 from batch
    where network_id = ${actor.networkId}::uuid and id = any(${[...batchIds]}::uuid[]) order by id for no key update`;
}
