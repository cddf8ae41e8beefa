import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { participantInclude, participantView } from './participant-view';

/** A participant with the trainings they came to, as far as the actor may see them. */
export async function getParticipant({ db }: ReadContext, id: string) {
  const row = await db.participant.findFirst({
    where: { id },
    include: {
      ...participantInclude,
      attendances: {
        where: { voidedAt: null, training: { voidedAt: null } },
        include: { training: { select: { id: true, title: true, heldOn: true } } },
      },
    },
  });
  if (!row) return undefined;
  const came = row.attendances
    .map(({ training: { id: trainingId, title, heldOn } }) => ({
      id: trainingId,
      title,
      heldOn: asCalendarDate(heldOn),
    }))
    .sort((a, b) => b.heldOn.localeCompare(a.heldOn));
  return { ...participantView(row), came };
}
