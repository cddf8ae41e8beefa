import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';
import type { assignSlotInput } from './slot.input';

/**
 * Says which batch a run of the drawn list became. A batch that was treated otherwise is asked about and stays in the arm
 * that was drawn; a batch older than the trial is refused, since it was made without knowing the list.
 */
export async function assignSlot(
  { db, actor, now, confirmed }: WriteContext,
  { id, revision, batchId, departure, reason }: z.output<typeof assignSlotInput>,
): Promise<Result<{ trialId: string }>> {
  const slot = await db.trialSlot.findFirst({
    where: { id, voidedAt: null },
    include: { trial: true, arm: true, site: true },
  });
  if (!slot || actor.role === 'funder') return notFound;
  const { trialId, trial, arm } = slot;
  if (trial.endedAt !== null) return invalid('', 'trial-ended');
  if (slot.batchId === batchId && slot.departure === departure) return ok({ trialId });
  if (slot.batchId !== null && slot.batchId !== batchId && reason === null)
    return invalid('reason', 'missing');
  if (slot.batchId === null && batchId === null && departure === null)
    return invalid('batchId', 'missing-choice');
  if (batchId !== null && batchId !== slot.batchId) {
    const batch = await db.batch.findFirst({ where: { id: batchId, siteId: slot.siteId, voidedAt: null } });
    if (!batch) return invalid('batchId', 'not-an-option');
    const startedOn = todayInZone(slot.site.timeZone, trial.startedAt ?? now);
    if (asCalendarDate(batch.inoculatedOn) < startedOn)
      return invalid('batchId', 'trial-batch-before', { date: startedOn });
    if ((await db.trialSlot.count({ where: { batchId, id: { not: id } } })) > 0)
      return invalid('batchId', 'trial-batch-taken', { code: batch.code });
    const otherwise = arm.methodId !== null && batch.methodId !== arm.methodId;
    if (otherwise && !confirmed.has('trial-other-treatment')) {
      const values = { arm: arm.label };
      return { kind: 'confirm', questions: [{ field: '', code: 'trial-other-treatment', values }] };
    }
  }
  const assignedAt = batchId === null ? null : batchId === slot.batchId ? slot.assignedAt : now;
  const { count } = await db.trialSlot.updateMany({
    where: { id, revision },
    data: { batchId, assignedAt, departure },
  });
  return count === 1 ? ok({ trialId }) : { kind: 'conflict', current: slot.revision };
}
