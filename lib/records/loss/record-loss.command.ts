import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { askFirst } from '../batch/ask-first';
import { batchUnits } from '../batch/batch-units';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import { checkLoss } from './check-loss';
import type { recordLossInput } from './loss.input';
import { nameLostUnits } from './name-units';

/** Records units lost for a cause other than contamination; they stay among the inoculated ones. */
export async function recordLoss(
  context: WriteContext,
  input: z.output<typeof recordLossInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = input.id ?? newId();
  const repeat = await db.loss.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: repeat.batchId });
  await lockBatch(context, input.batchId);
  const batch = await openBatch(context, input.batchId);
  if (!batch) return notFound;
  const wrongDate = checkEventDate('lostOn', input.lostOn, batch, now);
  if (wrongDate) return wrongDate;
  const errors = checkLoss(input, await batchUnits(context, batch));
  if (errors.length > 0) return { kind: 'invalid', errors };
  const { units, cause, note } = input;
  const lostOn = asDate(input.lostOn);
  const same = await db.loss.findFirst({
    where: { batchId: batch.id, lostOn, units, cause, voidedAt: null },
  });
  const values = { date: input.lostOn };
  const asked = askFirst(context, same ? [{ field: 'units', code: 'already-recorded', values }] : []);
  if (asked) return asked;
  const owner = { id, batchId: batch.id, siteId: batch.siteId };
  await db.loss.create({
    data: {
      networkId: actor.networkId,
      ...owner,
      ...{ lostOn, units, cause, note, origin },
      contaminatedUnits: input.contaminatedUnits ?? 0,
      createdById: actor.personId,
    },
  });
  await nameLostUnits(context, owner, input.unitNumbers);
  return ok({ id, batchId: batch.id });
}
