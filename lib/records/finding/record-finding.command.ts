import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { askFirst } from '../batch/ask-first';
import { batchUnits } from '../batch/batch-units';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatchUnits } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asDate } from '../fields/stored-date';
import { checkFinding } from './check-finding';
import type { recordFindingInput } from './finding.input';
import { nameFoundUnits } from './name-units';

/** Records units newly found contaminated. Each unit counts once, whatever is done with it later. */
export async function recordFinding(
  context: WriteContext,
  input: z.output<typeof recordFindingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = input.id ?? newId();
  const repeat = await db.finding.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: repeat.batchId });
  await lockBatchUnits(context, input.batchId);
  const batch = await openBatch(context, input.batchId);
  if (!batch) return notFound;
  const wrongDate = checkEventDate('foundOn', input.foundOn, batch, now);
  if (wrongDate) return wrongDate;
  const errors = checkFinding(input, await batchUnits(context, batch));
  if (errors.length > 0) return { kind: 'invalid', errors };
  const { units, sign, stage, action, note } = input;
  const foundOn = asDate(input.foundOn);
  const same = await db.finding.findFirst({
    where: { batchId: batch.id, foundOn, units, sign, voidedAt: null },
  });
  const values = { date: input.foundOn };
  const asked = askFirst(context, same ? [{ field: 'units', code: 'already-recorded', values }] : []);
  if (asked) return asked;
  const owner = { id, batchId: batch.id, siteId: batch.siteId };
  await db.finding.create({
    data: {
      networkId: actor.networkId,
      ...owner,
      ...{ foundOn, units, sign, stage, action, note, origin },
      createdById: actor.personId,
    },
  });
  await nameFoundUnits(context, owner, input.unitNumbers);
  return ok({ id, batchId: batch.id });
}
