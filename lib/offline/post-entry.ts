import type { Reply } from './after-reply';
import type { Entry } from './entry';
import { shedDatabase } from './shed-database';

/** What is posted for an entry: JSON, or for a picture a form of the entry and the file. */
async function bodyOf(entry: Entry): Promise<{ path: string; init: RequestInit }> {
  if (entry.kind !== 'photo')
    return {
      path: '/api/entries',
      init: { body: JSON.stringify(entry), headers: { 'content-type': 'application/json' } },
    };
  const kept = await (await shedDatabase()).get('pictures', entry.id);
  if (kept === undefined) throw new Error(`the picture of entry ${entry.id} is not on this phone`);
  const form = new FormData();
  form.set('entry', JSON.stringify(entry));
  form.set('file', kept.picture, 'photo');
  return { path: '/api/photos', init: { body: form } };
}

async function readJson(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    // A page in place of an answer, such as the sign-in page of a public network, says nothing about the entry.
    return null;
  }
}

/** Posts one entry to the server; throws when there is no connection. */
export async function postEntry(entry: Entry, signal: AbortSignal): Promise<Reply> {
  const { path, init } = await bodyOf(entry);
  const headers = new Headers(init.headers);
  headers.set('idempotency-key', entry.key);
  const response = await fetch(path, {
    ...init,
    method: 'POST',
    headers,
    signal,
    cache: 'no-store',
    redirect: 'error',
  });
  return {
    kind: 'answered',
    status: response.status,
    retryAfter: response.headers.get('retry-after'),
    body: await readJson(response),
  };
}
