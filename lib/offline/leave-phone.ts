import { forgetSnapshot } from './keep-snapshot';
import { shedDatabase } from './shed-database';

/**
 * What a sign-out leaves on the phone: nothing of the person's work; of the person's entries only those that are
 * not with the server.
 */
export async function leavePhone(personId: string): Promise<{ readonly unsent: number }> {
  await forgetSnapshot(personId);
  const database = await shedDatabase();
  const transaction = database.transaction(['entries', 'pictures'], 'readwrite', { durability: 'strict' });
  const own = await transaction.objectStore('entries').index('personId').getAll(personId);
  const sent = own.filter(({ standing }) => standing.state === 'sent');
  for (const { id } of sent) {
    await transaction.objectStore('entries').delete(id);
    await transaction.objectStore('pictures').delete(id);
  }
  await transaction.done;
  return { unsent: own.length - sent.length };
}
