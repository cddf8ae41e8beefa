import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Batch, Site } from '@/lib/database/generated/client';

/** A batch that the actor may see and that is not voided, with its site; undefined for any other. */
export async function openBatch(
  { db }: ReadContext,
  batchId: string,
): Promise<(Batch & { site: Site }) | undefined> {
  const batch = await db.batch.findFirst({ where: { id: batchId, voidedAt: null }, include: { site: true } });
  return batch ?? undefined;
}
