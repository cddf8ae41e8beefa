import 'server-only';
import type { Person } from './actor';
import { asPerson } from './scoped-db';

/** Ends this session, or every session of the person: the next request with an old cookie is refused. */
export async function signOut(
  person: Person,
  reach: 'this-session' | 'all-sessions',
  now = new Date(),
): Promise<void> {
  await asPerson(person.personId, (db) =>
    db.session.updateMany({
      where: {
        personId: person.personId,
        endedAt: null,
        ...(reach === 'this-session' ? { id: person.sessionId } : {}),
      },
      data: { endedAt: now },
    }),
  );
}
