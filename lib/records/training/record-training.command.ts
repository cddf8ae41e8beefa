import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import { prepareTraining } from './prepare-training';
import type { recordTrainingInput } from './training.input';
import { addAttendances, addNewcomers, addQuestions } from './training-children';

/** Records a training: when, about what, who came by name or how many in all, and answers before and after. */
export async function recordTraining(
  context: WriteContext,
  input: z.output<typeof recordTrainingInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  const id = input.id ?? newId();
  if (await db.training.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const prepared = await prepareTraining(context, input, 0);
  if (prepared.kind !== 'ok') return prepared;
  const { siteId } = input;
  const { networkId, personId: createdById } = actor;
  await db.training.create({ data: { networkId, id, siteId, ...prepared.value.row, origin, createdById } });
  const newcomers = await addNewcomers(context, prepared.value.newNames, input);
  const parent = { trainingId: id, siteId };
  await addAttendances(context, parent, [...input.participants, ...newcomers]);
  await addQuestions(context, parent, input.questions);
  return ok({ id });
}
