import { randomUUID } from 'node:crypto';
import { answerEntry } from '@/app/api/entries/answer-entry';
import type { Actor } from '@/lib/access/actor';
import { newId } from '@/lib/base/new-id';
import type { Entry } from '@/lib/offline/entry';

/** A harvest of 1.36 kg on 2026-05-10 as a phone keeps it, unless said otherwise. */
export function harvestEntry(actor: Actor, batchId: string, changes: Partial<Entry> = {}): Entry {
  return {
    id: newId(),
    key: randomUUID(),
    kind: 'weighing',
    personId: actor.personId,
    networkId: actor.networkId,
    madeAt: '2026-05-10T18:00:00.000Z',
    input: { weighedOn: '2026-05-10', fresh: { text: '1.36', unit: 'kg' }, lines: [{ batchId, flush: 1 }] },
    confirmed: [],
    ...changes,
  };
}

/** The request that a page of this site makes of an entry; a header set to '' is left out. */
export function entryRequest(entry: Entry, headers: Readonly<Record<string, string>> = {}): Request {
  const all = {
    'content-type': 'application/json',
    'idempotency-key': entry.key,
    'sec-fetch-site': 'same-origin',
    ...headers,
  };
  return new Request('http://localhost:3000/api/entries', {
    method: 'POST',
    body: JSON.stringify(entry),
    headers: Object.entries(all).filter(([, value]) => value !== ''),
  });
}

/** What the route answers to an entry that this person's phone sends. */
export async function postEntry(
  entry: Entry,
  who: Actor,
  headers: Readonly<Record<string, string>> = {},
): Promise<{ status: number; body: Record<string, unknown>; headers: Headers }> {
  const response = await answerEntry(entryRequest(entry, headers), async () => ({ person: who, actor: who }));
  const body = (await response.json()) as Record<string, unknown>;
  return { status: response.status, body, headers: response.headers };
}

/** Settings without which the application does not start; tests need no real ones. */
export function testSettings(): void {
  process.env.NEXTAUTH_URL = 'http://localhost:3000';
  process.env.NEXTAUTH_SECRET = 'a secret for tests, of 32 letters and more';
}
