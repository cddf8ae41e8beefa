import { type StoredSnapshot, shedDatabase } from './shed-database';
import type { ShedSnapshot } from './shed-snapshot';

/** Fetches what has changed of the person's work and keeps it; without a signal the last copy stays. */
export async function keepSnapshot(personId: string): Promise<void> {
  const database = await shedDatabase();
  const known = await database.get('snapshots', personId);
  let response: Response;
  try {
    response = await fetch('/api/shed', {
      headers: known?.tag ? { 'if-none-match': known.tag } : {},
      cache: 'no-store',
      redirect: 'error',
    });
  } catch {
    return;
  }
  if (response.status !== 200) return;
  const snapshot = (await response.json()) as ShedSnapshot;
  // A page that was open while somebody else signed in must not keep their work under this name.
  if (snapshot.person?.id !== personId) return;
  await database.put('snapshots', {
    personId,
    snapshot,
    tag: response.headers.get('etag'),
    keptAt: Date.now(),
  });
}

/** The copy kept last, of whoever used this phone last; undefined where there is none. */
export async function lastSnapshot(): Promise<StoredSnapshot | undefined> {
  const all = await (await shedDatabase()).getAll('snapshots');
  return all.sort((a, b) => b.keptAt - a.keptAt)[0];
}

/** Forgets the copy of a person's work. Entries not yet sent are another matter and stay. */
export async function forgetSnapshot(personId: string): Promise<void> {
  await (await shedDatabase()).delete('snapshots', personId);
}
