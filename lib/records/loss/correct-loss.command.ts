import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { batchUnits } from '../batch/batch-units';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import { checkLoss } from './check-loss';
import type { correctLossInput } from './loss.input';
import { nameLostUnits } from './name-units';

/** Corrects a loss; units named before are replaced. */
export async function correctLoss(
  context: WriteContext,
  input: z.output<typeof correctLossInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const { id, revision, units, cause, note } = input;
  const loss = await db.loss.findFirst({ where: { id, voidedAt: null } });
  if (loss) await lockBatch(context, loss.batchId);
  const batch = loss ? await openBatch(context, loss.batchId) : undefined;
  if (!loss || !batch) return notFound;
  if (loss.revision !== revision) return { kind: 'conflict', current: loss.revision };
  const wrongDate = checkEventDate('lostOn', input.lostOn, batch, now);
  if (wrongDate) return wrongDate;
  const errors = checkLoss(input, await batchUnits(context, batch, id));
  if (errors.length > 0) return { kind: 'invalid', errors };
  const { count } = await db.loss.updateMany({
    where: { id, revision, voidedAt: null },
    data: {
      ...{ units, cause, note },
      lostOn: asDate(input.lostOn),
      contaminatedUnits: input.contaminatedUnits ?? 0,
    },
  });
  if (count === 0) {
    const current = await db.loss.findFirst({ where: { id, voidedAt: null } });
    return current ? { kind: 'conflict', current: current.revision } : notFound;
  }
  await db.lossUnit.updateMany({
    where: { lossId: id, voidedAt: null },
    data: { voidedAt: now, voidReason: input.reason },
  });
  await nameLostUnits(context, loss, input.unitNumbers);
  return ok({ id, batchId: batch.id });
}
