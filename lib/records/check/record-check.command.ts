import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { askFirst } from '../batch/ask-first';
import { checkEventDate } from '../batch/check-event-date';
import { openBatch } from '../batch/open-batch';
import { asCalendarDate, asDate } from '../fields/stored-date';
import type { recordCheckInput } from './check.input';

/** Records that a batch was seen fully colonised, or with its first pins. */
export async function recordCheck(
  context: WriteContext,
  input: z.output<typeof recordCheckInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const { db, actor, origin, now } = context;
  const id = input.id ?? newId();
  const repeat = await db.check.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, batchId: repeat.batchId });
  const batch = await openBatch(context, input.batchId);
  if (!batch) return notFound;
  const wrongDate = checkEventDate('checkedOn', input.checkedOn, batch, now);
  if (wrongDate) return wrongDate;
  const { kind } = input;
  const earlier =
    kind === 'fully_colonised'
      ? await db.check.findFirst({ where: { batchId: batch.id, kind, voidedAt: null } })
      : null;
  const questions = earlier
    ? [{ field: 'kind', code: 'already-recorded', values: { date: asCalendarDate(earlier.checkedOn) } }]
    : [];
  const asked = askFirst(context, questions);
  if (asked) return asked;
  await db.check.create({
    data: {
      networkId: actor.networkId,
      id,
      batchId: batch.id,
      siteId: batch.siteId,
      checkedOn: asDate(input.checkedOn),
      kind,
      note: input.note,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, batchId: batch.id });
}
