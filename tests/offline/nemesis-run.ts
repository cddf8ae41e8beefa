import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import type { Actor } from '@/lib/access/actor';
import type { Entry } from '@/lib/offline/entry';
import type { KeptEntry, OutboxStore } from '@/lib/offline/outbox-store';
import { sendEntries } from '@/lib/offline/send-entries';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { badNetwork, calm, storm } from './bad-network';
import { memoryOutbox } from './memory-outbox';

/** Kill -9 of the app, or of the database, and a new start. */
export type Killer = { readonly app: () => Promise<void>; readonly database: () => Promise<void> };

export type NemesisPlan = {
  readonly random: SeededRandom;
  readonly entries: number;
  readonly devices: number;
  readonly people: readonly Actor[];
  readonly batchId: string;
  readonly port: () => number | undefined;
  readonly killer: Killer;
  readonly kills: number;
  /** The phone's planted fault: throw away what was answered with a status of the 400s. */
  readonly deletesRefused: boolean;
  /** Waited before the records are read, so that only what a kill prevented is missing and not what is late. */
  readonly restMilliseconds: number;
};

export type NemesisLog = {
  /** Entries that the person wrote, and those that they took back. */
  readonly made: ReadonlyMap<string, Entry>;
  readonly undone: ReadonlySet<string>;
  /** Entries that the phone calls sent. */
  readonly acknowledged: ReadonlySet<string>;
  /** Where the others stand in the end, for a person to read. */
  readonly unsent: readonly KeptEntry[];
  readonly tries: number;
  readonly kills: number;
};

// The phones' clocks run faster, so that minutes of waiting between tries pass in seconds.
const speed = 40;
const lastMilliseconds = 60_000;
// Waiting for an answer is shortened less: a server on a busy machine must be slow, not silent.
const answerSpeed = 5;

function forgetful(store: OutboxStore): OutboxStore {
  return {
    ...store,
    change: async (id, key, standing) => {
      const status = standing.trouble?.status ?? 0;
      if (status >= 400 && status < 500) {
        await store.change(id, key, { state: 'waiting' });
        return store.remove(id, key);
      }
      return store.change(id, key, standing);
    },
  };
}

function look(random: SeededRandom, actor: Actor, batchId: string): Entry {
  const id = randomUUID();
  const base = { id, key: randomUUID(), personId: actor.personId, networkId: actor.networkId };
  const madeAt = new Date().toISOString();
  const harvest = random.next() < 0.2;
  const line = { weighedOn: '2026-05-10', fresh: 1 + random.integer(9), lines: [{ batchId, flush: 1 }] };
  return harvest
    ? { ...base, kind: 'weighing', madeAt, input: { ...line, note: id }, confirmed: ['already-recorded'] }
    : { ...base, kind: 'look', madeAt, input: { batchId, lookedOn: '2026-05-10', note: id }, confirmed: [] };
}

/** Lets devices write and send through a bad network while app and database are killed, then heals and waits. */
export async function runNemesis(plan: NemesisPlan): Promise<NemesisLog> {
  const { random, batchId } = plan;
  const began = performance.now();
  const now = () => Date.now() + (performance.now() - began) * (speed - 1);
  const made = new Map<string, Entry>();
  const undone = new Set<string>();
  let weather = storm;
  let tries = 0;
  const { transport, settled } = badNetwork(
    plan.port,
    () => weather,
    () => random.next(),
  );

  const devices = Array.from({ length: plan.devices }, (_, index) => {
    const outbox = memoryOutbox();
    const actor = plan.people[index % plan.people.length];
    if (!actor) throw new Error('a device needs its person');
    const store = () => (plan.deletesRefused ? forgetful(outbox.open()) : outbox.open());
    const round = async (eager: boolean) => {
      await sendEntries({
        store: store(),
        transport: (entry, signal) => {
          tries += 1;
          return transport(entry, signal);
        },
        personId: actor.personId,
        ...{ now, eager, random: () => random.next() },
        after: (milliseconds, run) => {
          const timer = setTimeout(run, milliseconds / answerSpeed);
          return () => clearTimeout(timer);
        },
      });
      // The person looks at what needs them and sends it again, now and then as a new wording.
      for (const { entry, state } of outbox.all())
        if (state === 'needs-you') {
          if (random.next() < 0.5)
            await store().change(entry.id, entry.key, { state: 'waiting', notBefore: 0 });
          else await store().replace(entry.id, entry.key, { ...entry, key: randomUUID() });
        }
    };
    return { outbox, actor, store, round };
  });

  const work = devices.map(async ({ outbox, actor, store, round }) => {
    for (let written = 0; written < plan.entries / plan.devices; written += 1) {
      const entry = look(random, actor, batchId);
      made.set(entry.id, entry);
      await store().add(entry);
      if (random.next() < 0.04) {
        undone.add(entry.id);
        const undo = {
          id: randomUUID(),
          key: randomUUID(),
          kind: 'undo' as const,
          input: { entryId: entry.id },
        };
        await store().add({ ...entry, ...undo, confirmed: [] });
      }
      if (random.next() < 0.25) await round(random.next() < 0.7);
      // The phone dies in the middle of a round and is switched on again.
      if (random.next() < 0.02) {
        const dying = round(true);
        await pause(random.next() * 20);
        outbox.kill();
        await dying;
      }
    }
  });
  let working = true;
  let kills = 0;
  const nemesis = async () => {
    while (working && kills < plan.kills) {
      await pause(200 + random.next() * 800);
      if (!working) break;
      await (random.next() < 0.6 ? plan.killer.app() : plan.killer.database());
      kills += 1;
    }
  };
  const killing = nemesis();
  await Promise.all(work);
  working = false;
  await killing;
  // Once more with everything written and only some of it sent.
  await plan.killer.app();
  weather = calm;
  const unsent = (kept: KeptEntry) => kept.state !== 'sent';
  const giveUpAt = performance.now() + lastMilliseconds;
  while (performance.now() < giveUpAt && devices.some(({ outbox }) => outbox.all().some(unsent))) {
    await Promise.all(devices.map(({ round }) => round(true)));
    await pause(5);
  }
  await settled();
  await pause(plan.restMilliseconds);
  const acknowledged = devices.flatMap(({ outbox }) =>
    outbox.all().filter((kept) => kept.state === 'sent' && kept.entry.kind !== 'undo'),
  );
  return {
    ...{ made, undone, tries, kills: kills + 1 },
    unsent: devices.flatMap(({ outbox }) => outbox.all().filter(unsent)),
    acknowledged: new Set(acknowledged.map(({ entry }) => entry.id)),
  };
}
