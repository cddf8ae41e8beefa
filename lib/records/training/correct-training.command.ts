import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { prepareTraining } from './prepare-training';
import type { correctTrainingInput } from './training.input';
import { addAttendances, addNewcomers, addQuestions } from './training-children';

/**
 * Puts a training right. Who is no longer named did not come; people of sites out of the actor's sight stay as they are.
 * Questions are replaced: the old ones stay as voided ones.
 */
export async function correctTraining(
  context: WriteContext,
  input: z.output<typeof correctTrainingInput>,
): Promise<Result<{ id: string }>> {
  const { db, now } = context;
  const { id, revision, reason } = input;
  const existing = await db.training.findFirst({ where: { id, voidedAt: null } });
  if (!existing) return notFound;
  const { siteId } = existing;
  const came = await db.trainingAttendance.findMany({ where: { trainingId: id, voidedAt: null } });
  const seen = await db.participant.findMany({
    where: { id: { in: came.map(({ participantId }) => participantId) }, erasedAt: null, voidedAt: null },
    select: { id: true },
  });
  const wanted = new Set(input.participants);
  const gone = seen.filter((one) => !wanted.has(one.id));
  const fields = { ...input, siteId };
  const prepared = await prepareTraining(context, fields, came.length - seen.length);
  if (prepared.kind !== 'ok') return prepared;
  const { count } = await db.training.updateMany({
    where: { id, revision, voidedAt: null },
    data: prepared.value.row,
  });
  if (count === 0) return { kind: 'conflict', current: existing.revision };
  const voided = { voidedAt: now, voidReason: reason };
  await db.trainingAttendance.updateMany({
    where: { trainingId: id, voidedAt: null, participantId: { in: gone.map((one) => one.id) } },
    data: voided,
  });
  await db.trainingQuestion.updateMany({ where: { trainingId: id, voidedAt: null }, data: voided });
  const newcomers = await addNewcomers(context, prepared.value.newNames, fields);
  const already = new Set(came.map(({ participantId }) => participantId));
  const parent = { trainingId: id, siteId };
  await addAttendances(context, parent, [
    ...input.participants.filter((one) => !already.has(one)),
    ...newcomers,
  ]);
  await addQuestions(context, parent, input.questions);
  return ok({ id });
}
