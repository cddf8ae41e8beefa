import { afterReply, type Reply } from './after-reply';
import type { Entry } from './entry';
import type { KeptEntry, OutboxStore } from './outbox-store';
import { parentEntry } from './parent-entry';

/** Posts one entry. May throw or never settle; `signal` tells it to stop. */
export type Transport = (entry: Entry, signal: AbortSignal) => Promise<Reply>;

export type SendTools = {
  readonly store: OutboxStore;
  readonly transport: Transport;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Uniform in [0, 1). */
  readonly random: () => number;
  /** Calls `run` once after so many milliseconds, unless the answer is called first. */
  readonly after: (milliseconds: number, run: () => void) => () => void;
  /** Whose entries these are; others in the store are left alone. */
  readonly personId: string;
  /** Do not wait for the time of the next try, save where the server asked to: the signal is back, the person looks. */
  readonly eager?: boolean;
};

export type RoundEnd = {
  readonly sent: number;
  /** Entries not with the server yet, whatever their state. */
  readonly unsent: number;
  /** The server knows no sign-in: nothing more is sent until there is one. */
  readonly signIn: boolean;
  /** When the next entry is due, milliseconds since 1970; null: nothing will be, or a sign-in comes first. */
  readonly nextAt: number | null;
};

export const replyMilliseconds = 20_000;
export const keepSentMilliseconds = 24 * 60 * 60 * 1000;
const atOnce = 4;

async function ask({ transport, after }: SendTools, entry: Entry): Promise<Reply> {
  const abort = new AbortController();
  let cancel = () => {};
  const late = new Promise<Reply>((resolve) => {
    cancel = after(replyMilliseconds, () => {
      abort.abort();
      resolve({ kind: 'lost' });
    });
  });
  try {
    return await Promise.race([transport(entry, abort.signal), late]);
  } catch {
    return { kind: 'lost' };
  } finally {
    cancel();
  }
}

/** An account that does not fit is tried again, since the right one may sign in on this phone. */
const open = (kept: KeptEntry): boolean =>
  kept.state === 'waiting' ||
  kept.state === 'sending' ||
  (kept.state === 'needs-you' && kept.trouble?.status === 403);

function due(kept: KeptEntry, now: number, eager: boolean): boolean {
  const serverAsked = kept.trouble?.status === 429 || kept.trouble?.status === 503;
  return kept.notBefore <= now || (eager && !serverAsked);
}

/** An entry waits for its parent while that is on this phone and unsent. */
function parentUnsent(kept: KeptEntry, all: readonly KeptEntry[]): boolean {
  const parent = parentEntry(kept.entry);
  return parent !== undefined && all.some(({ entry, state }) => entry.id === parent && state !== 'sent');
}

/**
 * One round: tries each entry that is due once, a few at a time and none waiting for another (save an `undo` or
 * `photo` for its parent). Never removes an entry that is not sent. Run it by one caller at a time per store: an entry
 * found as `sending` is taken for the remains of a round that died.
 */
export async function sendEntries(tools: SendTools): Promise<RoundEnd> {
  const { store, now, random, personId, eager = false } = tools;
  const tried = new Set<string>();
  let sent = 0;
  let signIn = false;

  const mine = async () => (await store.list()).filter(({ entry }) => entry.personId === personId);

  const next = async (): Promise<KeptEntry | undefined> => {
    if (signIn) return undefined;
    const all = await mine();
    const found = all.find(
      (kept) =>
        !tried.has(kept.entry.id) && open(kept) && due(kept, now(), eager) && !parentUnsent(kept, all),
    );
    if (found) tried.add(found.entry.id);
    return found;
  };

  const send = async (kept: KeptEntry): Promise<void> => {
    const { id, key } = kept.entry;
    const begun: KeptEntry = { ...kept, state: 'sending', tries: kept.tries + 1 };
    if (!(await store.change(id, key, { state: 'sending', tries: begun.tries }))) return;
    const reply = await ask(tools, kept.entry);
    if (reply.kind === 'answered' && reply.status === 401) signIn = true;
    const standing = afterReply(begun, reply, now(), random);
    if ((await store.change(id, key, standing)) && standing.state === 'sent') sent += 1;
  };

  const work = async (): Promise<void> => {
    for (let kept = await next(); kept; kept = await next()) await send(kept);
  };

  for (const { entry, state, sentAt } of await mine())
    if (state === 'sent' && sentAt !== null && sentAt + keepSentMilliseconds <= now())
      await store.remove(entry.id, entry.key);
  await Promise.all(Array.from({ length: atOnce }, work));

  const all = await mine();
  const waiting = all.filter((kept) => open(kept) && !parentUnsent(kept, all));
  return {
    sent,
    unsent: all.filter(({ state }) => state !== 'sent').length,
    signIn,
    nextAt: signIn || waiting.length === 0 ? null : Math.min(...waiting.map(({ notBefore }) => notBefore)),
  };
}
