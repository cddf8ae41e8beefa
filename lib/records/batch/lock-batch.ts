import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Holds the batch's row until the transaction ends, so that two phones cannot both take its last unit. */
export async function lockBatch({ db, actor }: ReadContext, batchId: string): Promise<void> {
  await db.$queryRaw`select 1 from batch where network_id = ${actor.networkId}::uuid and id = ${batchId}::uuid for update`;
}

/** Holds the batch's row against others who count its units; a harvest, which refers to its key alone, need not wait. */
export async function lockBatchUnits({ db, actor }: ReadContext, batchId: string): Promise<void> {
  await db.$queryRaw`select 1 from batch
    where network_id = ${actor.networkId}::uuid and id = ${batchId}::uuid for no key update`;
}
