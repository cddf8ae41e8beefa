import { indexedOutbox } from './indexed-outbox';
import { outboxNews } from './outbox-news';
import type { OutboxStore } from './outbox-store';
import { emptySummary, type OutboxSummary, summaryOf } from './outbox-summary';
import { postEntry } from './post-entry';
import type { QuickOutbox } from './quick-outbox';
import { quickOutboxOf } from './quick-outbox-of';
import { type RoundEnd, sendEntries } from './send-entries';
import { withSendingLock } from './sending-lock';

export type Outbox = {
  readonly quick: QuickOutbox;
  readonly store: OutboxStore;
  readonly summary: () => OutboxSummary;
  /** Calls `told` now and after each change, until the answer is called. */
  readonly follow: (told: (summary: OutboxSummary) => void) => () => void;
  /** Tries everything now. */
  readonly sendNow: () => Promise<RoundEnd | undefined>;
  /** Called after each round that sent something. */
  readonly afterSent: (listener: () => void) => () => void;
};

const shortestWait = 1_000;
const longestWait = 60_000;

let current: { key: string; outbox: Outbox } | undefined;

/**
 * The outbox of a person in a network on this phone. From the first call on it sends by itself: at once, when the
 * signal returns, when the page is looked at again, and by a timer while it is. No browser needs to know how to send in
 * the background.
 */
export function outboxOf(personId: string, networkId: string): Outbox {
  const key = `${personId} ${networkId}`;
  if (current?.key !== key) current = { key, outbox: startOutbox(personId, networkId) };
  return current.outbox;
}

function startOutbox(personId: string, networkId: string): Outbox {
  const news = outboxNews();
  const store = indexedOutbox(news.tell);
  const followers = new Set<(summary: OutboxSummary) => void>();
  const sentListeners = new Set<() => void>();
  let summary = emptySummary;
  let signIn = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const refresh = async () => {
    summary = summaryOf(await store.list(), personId, signIn);
    for (const told of [...followers]) told(summary);
  };

  const wait = (nextAt: number | null) => {
    clearTimeout(timer);
    if (nextAt === null || document.visibilityState === 'hidden') return;
    const delay = Math.min(longestWait, Math.max(shortestWait, nextAt - Date.now()));
    timer = setTimeout(() => void round(false), delay);
  };

  const round = async (eager: boolean): Promise<RoundEnd | undefined> => {
    const end = await withSendingLock(() =>
      sendEntries({
        store,
        transport: postEntry,
        personId,
        eager,
        now: Date.now,
        random: Math.random,
        after: (milliseconds, run) => {
          const late = setTimeout(run, milliseconds);
          return () => clearTimeout(late);
        },
      }),
    );
    // Another page is at it: look again a little later, in case it is closed half way.
    if (end === undefined) wait(Date.now() + longestWait / 6);
    else {
      signIn = end.signIn;
      wait(end.nextAt);
      if (end.sent > 0) for (const listener of [...sentListeners]) listener();
    }
    await refresh();
    return end;
  };

  const look = () => {
    if (document.visibilityState === 'visible') void round(true);
  };
  news.listen(() => void refresh());
  addEventListener('online', look);
  addEventListener('focus', look);
  addEventListener('pageshow', look);
  document.addEventListener('visibilitychange', look);
  void round(true);

  return {
    store,
    quick: quickOutboxOf({
      store,
      news,
      personId,
      networkId,
      now: () => new Date(),
      send: () => void round(true),
    }),
    summary: () => summary,
    follow: (told) => {
      followers.add(told);
      told(summary);
      return () => followers.delete(told);
    },
    sendNow: () => round(true),
    afterSent: (listener) => {
      sentListeners.add(listener);
      return () => sentListeners.delete(listener);
    },
  };
}
