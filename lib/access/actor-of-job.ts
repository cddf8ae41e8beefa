import 'server-only';
import type { Actor } from './actor';
import { actorInNetwork } from './actor-in-network';
import { asPerson } from './scoped-db';

/** A person for whom the server does something by itself, as they would do it, and where their letters go. */
export type JobActor = { readonly actor: Actor; readonly email: string };

/** The person as actor in a network, read as the person themselves; undefined once they have left either. */
export async function actorOfJob(personId: string, networkId: string): Promise<JobActor | undefined> {
  const row = await asPerson(personId, (db) =>
    db.person.findFirst({ where: { id: personId, disabledAt: null }, include: { contact: true } }),
  );
  if (!row?.contact) return undefined;
  const { language, region, massUnit, temperatureUnit, volumeUnit, contact } = row;
  const actor = await actorInNetwork(
    // No session stands behind it: what needs one, such as signing out, finds none.
    {
      sessionId: '',
      personId,
      name: contact.name,
      ...{ language, region, massUnit, temperatureUnit, volumeUnit },
    },
    networkId,
  );
  return actor && { actor, email: contact.email };
}
