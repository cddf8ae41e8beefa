import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { reopenBatchInput } from './reopen-batch.input';

/** Takes a closing back, with a reason: it was the wrong batch, or it fruited again. */
export async function reopenBatch(
  { db }: WriteContext,
  { id, revision }: z.output<typeof reopenBatchInput>,
): Promise<Result<{ id: string }>> {
  const { count } = await db.batch.updateMany({
    where: { id, revision, voidedAt: null, closedOn: { not: null } },
    data: { closedOn: null, closeReason: null, spentDestination: null, noHarvest: null },
  });
  if (count === 1) return ok({ id });
  const batch = await db.batch.findFirst({ where: { id, voidedAt: null } });
  if (!batch) return notFound;
  if (batch.revision !== revision) return { kind: 'conflict', current: batch.revision };
  return invalid('', 'not-closed');
}
