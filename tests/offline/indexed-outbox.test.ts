import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { newId } from '@/lib/base/new-id';
import { entriesFile, readEntriesFile } from '@/lib/offline/entries-file';
import type { Entry } from '@/lib/offline/entry';
import { indexedOutbox } from '@/lib/offline/indexed-outbox';
import { leavePhone } from '@/lib/offline/leave-phone';
import { outboxNews } from '@/lib/offline/outbox-news';
import { summaryOf } from '@/lib/offline/outbox-summary';
import { quickOutboxOf } from '@/lib/offline/quick-outbox-of';
import { shedDatabase } from '@/lib/offline/shed-database';

const person = newId();
const network = newId();

function entryOf(change: Partial<Entry> = {}): Entry {
  return {
    id: newId(),
    key: newId(),
    kind: 'weighing',
    personId: person,
    networkId: network,
    madeAt: '2026-05-04T10:00:00.000Z',
    input: { fresh: { text: '1.2', unit: 'kg' } },
    confirmed: [],
    ...change,
  };
}

beforeEach(async () => {
  const database = await shedDatabase();
  await database.clear('entries');
  await database.clear('snapshots');
});

describe('the outbox on the phone', () => {
  it('keeps entries in the order in which they were made', async () => {
    const store = indexedOutbox();
    const made = [entryOf(), entryOf(), entryOf()];
    for (const entry of made) await store.add(entry);
    expect((await store.list()).map(({ entry }) => entry.id)).toEqual(made.map(({ id }) => id));
  });

  it('keeps an entry once, as it was first made', async () => {
    const store = indexedOutbox();
    const entry = entryOf();
    await store.add(entry);
    await store.add({ ...entry, input: { fresh: 'other' } });
    const [kept] = await store.list();
    expect(await store.list()).toHaveLength(1);
    expect(kept?.entry.input).toEqual(entry.input);
  });

  it('lets an answer to an earlier wording change nothing', async () => {
    const store = indexedOutbox();
    const entry = entryOf();
    await store.add(entry);
    const later = { ...entry, key: newId() };
    expect(await store.replace(entry.id, entry.key, later)).toBe(true);
    expect(await store.change(entry.id, entry.key, { state: 'sent' })).toBe(false);
    expect((await store.list())[0]?.state).toBe('waiting');
  });

  it('neither replaces nor removes what is being sent', async () => {
    const store = indexedOutbox();
    const entry = entryOf();
    await store.add(entry);
    await store.change(entry.id, entry.key, { state: 'sending', tries: 1 });
    expect(await store.replace(entry.id, entry.key, entryOf({ id: entry.id }))).toBe(false);
    expect(await store.remove(entry.id, entry.key)).toBe(false);
    expect(await store.list()).toHaveLength(1);
  });

  it('tells each change and no refusal', async () => {
    const told: string[] = [];
    const store = indexedOutbox((id) => told.push(id));
    const entry = entryOf();
    await store.add(entry);
    await store.change(entry.id, 'another key', { state: 'sent' });
    expect(told).toEqual([entry.id]);
  });
});

describe('taking an entry back', () => {
  const parts = () => {
    const news = outboxNews();
    const store = indexedOutbox(news.tell);
    const quick = quickOutboxOf({
      store,
      news,
      personId: person,
      networkId: network,
      now: () => new Date('2026-05-04T10:00:00Z'),
      send: () => {},
    });
    return { store, quick };
  };

  it('removes what the server has never been sent', async () => {
    const { store, quick } = parts();
    const id = newId();
    expect(await quick.save({ id, kind: 'check', input: {}, confirmed: [] })).toEqual({ kind: 'kept' });
    expect(await quick.undo(id)).toEqual({ kind: 'undone' });
    expect(await store.list()).toEqual([]);
  });

  it('sends an undo after what the server may have', async () => {
    const { store, quick } = parts();
    const id = newId();
    await quick.save({ id, kind: 'check', input: {}, confirmed: [] });
    const [kept] = await store.list();
    await store.change(id, kept?.entry.key ?? '', { state: 'waiting', tries: 1 });
    await quick.undo(id);
    const all = await store.list();
    expect(all.map(({ entry }) => entry.kind)).toEqual(['check', 'undo']);
    expect(all[1]?.entry.input).toEqual({ entryId: id });
  });
});

describe('leaving the phone', () => {
  it('forgets the person’s work and what was sent, and keeps what was not', async () => {
    const store = indexedOutbox();
    const [sent, unsent, other] = [entryOf(), entryOf(), entryOf({ personId: newId() })];
    for (const entry of [sent, unsent, other]) await store.add(entry);
    await store.change(sent.id, sent.key, { state: 'sent', sentAt: 1 });
    expect(await leavePhone(person)).toEqual({ unsent: 1 });
    expect((await store.list()).map(({ entry }) => entry.id)).toEqual([unsent.id, other.id]);
    expect(await (await shedDatabase()).getAll('snapshots')).toEqual([]);
  });

  it('counts the entries of others apart', async () => {
    const store = indexedOutbox();
    for (const entry of [entryOf(), entryOf({ personId: newId() })]) await store.add(entry);
    expect(summaryOf(await store.list(), person, true)).toEqual({
      unsent: 1,
      needYou: 0,
      others: 1,
      signIn: true,
    });
  });
});

describe('the file of unsent entries', () => {
  it('can be read back in by the same person, and by no other', async () => {
    const store = indexedOutbox();
    const entry = entryOf();
    await store.add(entry);
    const { text, name } = entriesFile(await store.list(), new Date('2026-05-04T10:00:00Z'));
    expect(name).toBe('pinset-1-unsent-2026-05-04T1000.json');
    expect(readEntriesFile(text, person)).toEqual([entry]);
    expect(readEntriesFile(text, newId())).toEqual([]);
  });

  it('is told from any other file', () => {
    for (const text of ['', '{', '[]', '{"form":"other","entries":[]}', '{"form":"pinset-unsent-entries"}'])
      expect(readEntriesFile(text, person)).toBeUndefined();
  });
});
