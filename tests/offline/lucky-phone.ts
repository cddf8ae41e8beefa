import { randomUUID } from 'node:crypto';
import { expect } from 'vitest';
import type { Reply } from '@/lib/offline/after-reply';
import type { Entry } from '@/lib/offline/entry';
import { replyMilliseconds, sendEntries, type Transport } from '@/lib/offline/send-entries';
import { memoryOutbox } from './memory-outbox';

export const personId = randomUUID();
export const hour = 60 * 60 * 1000;

export function entry(changes: Partial<Entry> = {}): Entry {
  return {
    ...{ id: randomUUID(), key: randomUUID(), kind: 'look', personId, networkId: randomUUID() },
    ...{ madeAt: '2026-05-10T18:00:00.000Z', input: {}, confirmed: [] },
    ...changes,
  };
}

export const saved = (one: Entry): Reply => ({
  kind: 'answered',
  status: 200,
  retryAfter: null,
  body: { kind: 'saved', recordId: one.id, revision: 1, savedAt: '2026-05-10T18:00:01.000Z' },
});
export const answer = (status: number, body: unknown = null, retryAfter: string | null = null): Reply => ({
  kind: 'answered',
  ...{ status, retryAfter, body },
});
export const refused = (text: string) => ({ kind: 'refused', errors: [{ field: 'fresh', text }] });

/** A phone with some entries, a clock that is set by hand, and whatever the network answers. */
export function phone(entries: readonly Entry[], reply: (one: Entry) => Reply | 'hang') {
  const outbox = memoryOutbox();
  const posted: string[] = [];
  const late: (() => void)[] = [];
  let now = 1_000_000;
  const transport: Transport = (one, signal) => {
    posted.push(one.id);
    const given = reply(one);
    return given === 'hang'
      ? new Promise((_resolve, reject) =>
          signal.addEventListener('abort', () => reject(new Error('aborted'))),
        )
      : Promise.resolve(given);
  };
  return {
    outbox,
    posted,
    kept: (one: Entry) => outbox.all().find((kept) => kept.entry.id === one.id),
    pass: (milliseconds: number) => {
      now += milliseconds;
    },
    async keep() {
      for (const one of entries) await outbox.open().add(one);
    },
    /** Lets every request that hangs run out of time. */
    runOut: () => {
      for (const run of late.splice(0)) run();
    },
    round: (eager = false) =>
      sendEntries({
        store: outbox.open(),
        transport,
        now: () => now,
        random: () => 0.5,
        after: (milliseconds, run) => {
          expect(milliseconds).toBe(replyMilliseconds);
          late.push(run);
          return () => late.splice(late.indexOf(run), 1);
        },
        personId,
        eager,
      }),
  };
}
