import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { ConsentDates } from './consent-dates';

type NewParticipant = { readonly id: string; readonly siteId: string; readonly name: string };

/** Writes a participant, and the name in the one place where it can be erased. */
export async function insertParticipant(
  { db, actor, origin }: WriteContext,
  { id, siteId, name }: NewParticipant,
  consents: ConsentDates,
): Promise<void> {
  const { networkId, personId: createdById } = actor;
  await db.participant.create({ data: { networkId, id, siteId, ...consents, origin, createdById } });
  await db.participantContact.create({ data: { networkId, id, siteId, name } });
}
