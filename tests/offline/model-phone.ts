import { randomUUID } from 'node:crypto';
import { answerEntry } from '@/app/api/entries/answer-entry';
import type { Actor } from '@/lib/access/actor';
import type { Reply } from '@/lib/offline/after-reply';
import type { Entry } from '@/lib/offline/entry';
import type { KeptEntry } from '@/lib/offline/outbox-store';
import { type RoundEnd, sendEntries } from '@/lib/offline/send-entries';
import { entryRequest } from '../support/entries';
import { memoryOutbox } from './memory-outbox';

/** What happens to one request on its way. */
export const fates = [
  'fine',
  'lose-request',
  'lose-answer',
  'twice',
  'false-500',
  'false-422',
  'false-429',
] as const;
export type Fate = (typeof fates)[number];

/** The route's own function, asked by whoever is signed in. */
export async function ask(entry: Entry, who: Actor | undefined): Promise<Reply> {
  const response = await answerEntry(entryRequest(entry), async () =>
    who ? { person: who, actor: who } : undefined,
  );
  const retryAfter = response.headers.get('retry-after');
  return { kind: 'answered', status: response.status, retryAfter, body: await response.json() };
}

/** A phone whose person, signal and luck are set by hand, before the real route and a real database. */
export function modelPhone(owner: Actor, batchId: string) {
  const outbox = memoryOutbox();
  let store = outbox.open();
  let signedIn: Actor | undefined = owner;
  let online = true;
  let now = Date.now();

  const transport = (luck: readonly Fate[]) => {
    let next = 0;
    return async (entry: Entry): Promise<Reply> => {
      if (!online) return { kind: 'lost' };
      const fate = luck.length === 0 ? 'fine' : (luck[next++ % luck.length] ?? 'fine');
      if (fate === 'lose-request') return { kind: 'lost' };
      if (fate.startsWith('false-'))
        return { kind: 'answered', status: Number(fate.slice(6)), retryAfter: null, body: null };
      if (fate === 'twice') await Promise.all([ask(entry, signedIn), ask(entry, signedIn)]);
      const reply = await ask(entry, signedIn);
      return fate === 'lose-answer' ? { kind: 'lost' } : reply;
    };
  };
  const input = (id: string, grams: number) => ({
    ...{ weighedOn: '2026-05-10', fresh: grams, note: id },
    lines: [{ batchId, flush: 1 }],
  });
  const anew = (id: string, kind: Entry['kind'], typed: Entry['input']): Entry => ({
    ...{ id, key: randomUUID(), kind, input: typed, confirmed: [] },
    ...{ personId: owner.personId, networkId: owner.networkId, madeAt: new Date().toISOString() },
  });

  return {
    all: outbox.all,
    input,
    store: () => store,
    signIn: (who: Actor | undefined) => {
      signedIn = who;
    },
    signal: (there: boolean) => {
      online = there;
    },
    pass: (milliseconds: number) => {
      now += milliseconds;
    },
    write: async (grams: number): Promise<string> => {
      const id = randomUUID();
      await store.add(anew(id, 'weighing', input(id, grams)));
      return id;
    },
    reword: ({ entry }: KeptEntry, typed: Entry['input']) =>
      store.replace(entry.id, entry.key, { ...entry, key: randomUUID(), input: typed }),
    undo: (of: string) => store.add(anew(randomUUID(), 'undo', { entryId: of })),
    send: (luck: readonly Fate[], eager: boolean): Promise<RoundEnd> =>
      sendEntries({
        store,
        transport: transport(luck),
        ...{ now: () => now, random: () => 0.5, eager, after: () => () => {} },
        personId: owner.personId,
      }),
    /** The phone is switched off and on; whatever it was doing stops where it is. */
    restart: () => {
      outbox.kill();
      store = outbox.open();
    },
  };
}
export type ModelPhone = ReturnType<typeof modelPhone>;
