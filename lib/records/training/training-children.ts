import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { asDate } from '../fields/stored-date';
import { noConsent } from '../participant/consent-dates';
import { insertParticipant } from '../participant/insert-participant';
import type { TrainingFields } from './prepare-training';

type Parent = { readonly trainingId: string; readonly siteId: string };

function ownColumns({ actor, origin }: WriteContext, parent: Parent) {
  return { networkId: actor.networkId, ...parent, origin, createdById: actor.personId };
}

/** Adds people who are new to the site and answers their ids. */
export async function addNewcomers(
  context: WriteContext,
  names: readonly string[],
  { siteId, heldOn, newCounted }: TrainingFields,
): Promise<string[]> {
  const consents = newCounted === 'yes' ? { ...noConsent, countedOn: asDate(heldOn) } : noConsent;
  const ids: string[] = [];
  for (const name of names) {
    const id = newId();
    await insertParticipant(context, { id, siteId, name }, consents);
    ids.push(id);
  }
  return ids;
}

/** Writes down that these people came. */
export async function addAttendances(
  context: WriteContext,
  parent: Parent,
  participantIds: readonly string[],
): Promise<void> {
  const own = ownColumns(context, parent);
  await context.db.trainingAttendance.createMany({
    data: [...new Set(participantIds)].map((participantId) => ({ ...own, id: newId(), participantId })),
  });
}

/** Writes down the questions with how often each point was chosen, in the order asked. */
export async function addQuestions(
  context: WriteContext,
  parent: Parent,
  questions: TrainingFields['questions'],
): Promise<void> {
  const own = ownColumns(context, parent);
  await context.db.trainingQuestion.createMany({
    data: questions.map((question) => ({ ...own, id: newId(), ...question })),
  });
}
