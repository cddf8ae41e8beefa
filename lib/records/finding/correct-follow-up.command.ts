import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import { checkFollowUp } from './check-follow-up';
import type { correctFollowUpInput } from './follow-up.input';

/** Corrects a follow-up of a finding. */
export async function correctFollowUp(
  context: WriteContext,
  input: z.output<typeof correctFollowUpInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const { id, revision } = input;
  const followUp = await db.findingFollowUp.findFirst({
    where: { id, voidedAt: null, finding: { voidedAt: null } },
    include: { finding: true },
  });
  const batch = followUp ? await openBatch(context, followUp.finding.batchId) : undefined;
  if (!followUp || !batch) return notFound;
  const problem = checkFollowUp(input, followUp.finding, batch, now);
  if (problem) return problem;
  const { count } = await db.findingFollowUp.updateMany({
    where: { id, revision, voidedAt: null },
    data: { doneOn: asDate(input.doneOn), action: input.action, units: input.units, note: input.note },
  });
  if (count === 1) return ok({ id, batchId: batch.id });
  const current = await db.findingFollowUp.findFirst({ where: { id, voidedAt: null } });
  return current ? { kind: 'conflict', current: current.revision } : notFound;
}
