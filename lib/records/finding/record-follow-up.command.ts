import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import { checkFollowUp } from './check-follow-up';
import type { recordFollowUpInput } from './follow-up.input';

/** Records what was done later with units of a finding. It changes no count of contaminated units. */
export async function recordFollowUp(
  context: WriteContext,
  input: z.output<typeof recordFollowUpInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = input.id ?? newId();
  const finding = await db.finding.findFirst({ where: { id: input.findingId, voidedAt: null } });
  const batch = finding ? await openBatch(context, finding.batchId) : undefined;
  if (!finding || !batch) return notFound;
  const repeat = await db.findingFollowUp.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: batch.id });
  const problem = checkFollowUp(input, finding, batch, now);
  if (problem) return problem;
  await db.findingFollowUp.create({
    data: {
      networkId: actor.networkId,
      id,
      findingId: finding.id,
      siteId: finding.siteId,
      doneOn: asDate(input.doneOn),
      action: input.action,
      units: input.units,
      note: input.note,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, batchId: batch.id });
}
