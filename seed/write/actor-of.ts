import type { Actor } from '@/lib/access/actor';
import { lookUpSession } from '@/lib/access/session-lookup';
import { openSession } from '@/lib/access/sign-in';

/** The actor of a person with one network, by a session of the seed's own. */
export async function actorOf(personId: string): Promise<Actor> {
  const signed = await lookUpSession(await openSession(personId, 'seed'));
  if (!signed?.actor) throw new Error(`person ${personId} has no open network`);
  return signed.actor;
}
