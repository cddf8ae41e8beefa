import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { batchUnits } from '../batch/batch-units';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asCalendarDate, asDate } from '../fields/stored-date';
import { checkFinding } from './check-finding';
import type { correctFindingInput } from './finding.input';
import { nameFoundUnits } from './name-units';

/** Corrects a finding; units named before are replaced, its follow-ups stay and must still fit. */
export async function correctFinding(
  context: WriteContext,
  input: z.output<typeof correctFindingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, now } = context;
  const { id, revision, units, sign, stage, action, note } = input;
  const finding = await db.finding.findFirst({
    where: { id, voidedAt: null },
    include: { followUps: { where: { voidedAt: null }, orderBy: { doneOn: 'asc' } } },
  });
  if (finding) await lockBatch(context, finding.batchId);
  const batch = finding ? await openBatch(context, finding.batchId) : undefined;
  if (!finding || !batch) return notFound;
  if (finding.revision !== revision) return { kind: 'conflict', current: finding.revision };
  const wrongDate = checkEventDate('foundOn', input.foundOn, batch, now);
  if (wrongDate) return wrongDate;
  const errors = checkFinding(input, await batchUnits(context, batch, id));
  if (errors.length > 0) return { kind: 'invalid', errors };
  const least = Math.max(0, ...finding.followUps.map((followUp) => followUp.units));
  if (units < least) return invalid('units', 'fewer-than-followed-up', { least });
  const [first] = finding.followUps.map(({ doneOn }) => asCalendarDate(doneOn));
  if (first !== undefined && input.foundOn > first) return invalid('foundOn', 'after', { date: first });
  const { count } = await db.finding.updateMany({
    where: { id, revision, voidedAt: null },
    data: { foundOn: asDate(input.foundOn), units, sign, stage, action, note },
  });
  if (count === 0) {
    const current = await db.finding.findFirst({ where: { id, voidedAt: null } });
    return current ? { kind: 'conflict', current: current.revision } : notFound;
  }
  await db.findingUnit.updateMany({
    where: { findingId: id, voidedAt: null },
    data: { voidedAt: now, voidReason: input.reason },
  });
  await nameFoundUnits(context, finding, input.unitNumbers);
  return ok({ id, batchId: batch.id });
}
