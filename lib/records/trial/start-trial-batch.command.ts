import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { startBatch } from '../batch/start-batch.command';
import { assignSlot } from './assign-slot.command';
import type { startTrialBatchInput } from './slot.input';

/** Starts the batch of a run of a trial: batch and its place in the list are saved together, or neither is. */
export async function startTrialBatch(
  context: WriteContext,
  { trialSlotId, ...input }: z.output<typeof startTrialBatchInput>,
): Promise<Result<{ id: string; code: string }>> {
  const slot = await context.db.trialSlot.findFirst({
    where: { id: trialSlotId, voidedAt: null },
    include: { site: true },
  });
  if (!slot) return notFound;
  if (slot.siteId !== input.siteId) return invalid('siteId', 'trial-other-site', { site: slot.site.name });
  const started = await startBatch(context, input);
  if (started.kind !== 'ok' || slot.batchId === started.value.id) return started;
  if (slot.batchId !== null) return invalid('', 'trial-slot-filled');
  const assigned = await assignSlot(context, {
    id: slot.id,
    revision: slot.revision,
    batchId: started.value.id,
    departure: slot.departure,
    reason: null,
  });
  return assigned.kind === 'ok' ? ok(started.value) : assigned;
}
