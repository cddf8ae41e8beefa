import type { KeptEntry, Standing, Trouble } from './outbox-store';
import { readAnswer } from './read-answer';

/** What came back for an entry; `lost` for no answer in time or no connection. */
export type Reply =
  | {
      readonly kind: 'answered';
      readonly status: number;
      /** The header Retry-After as sent: seconds or a date. */
      readonly retryAfter: string | null;
      /** The body read as JSON; null where it is none. */
      readonly body: unknown;
    }
  | { readonly kind: 'lost' };

const firstDelay = 2_000;
const longestDelay = 5 * 60_000;

/** Doubles from 2 s to 5 min, the upper half of it left to chance so that phones do not come back all at once. */
export function retryDelay(tries: number, random: () => number): number {
  const full = Math.min(longestDelay, firstDelay * 2 ** Math.max(0, Math.min(tries - 1, 20)));
  return Math.round(full / 2 + (full / 2) * random());
}

/** Milliseconds that the server asks to wait, at most a day; undefined where it does not say. */
function askedDelay(header: string | null, now: number): number | undefined {
  if (header === null || header.trim() === '') return undefined;
  const wait = /^\d+$/.test(header.trim()) ? Number(header) * 1000 : Date.parse(header) - now;
  return Number.isFinite(wait) ? Math.min(Math.max(wait, 0), 24 * 60 * 60_000) : undefined;
}

/** Statuses that more time may mend; any other of the 400s needs a person. */
const passing = new Set([408, 425, 429]);

/**
 * Where an entry stands after a try. Only the server's own word `saved` makes it sent; no answer removes it. A sign-in
 * that has lapsed (401) leaves it waiting, another account (403) makes it need the person and is tried again later.
 */
export function afterReply(kept: KeptEntry, reply: Reply, now: number, random: () => number): Standing {
  const { tries, saved, sentAt } = kept;
  const again = (trouble: Trouble, state: Standing['state'] = 'waiting', wait?: number): Standing => ({
    state,
    tries,
    trouble,
    saved,
    sentAt,
    notBefore: now + Math.max(wait ?? 0, retryDelay(tries, random)),
  });
  if (reply.kind === 'lost') return again({ status: null, answer: null });
  const { status } = reply;
  const answer = readAnswer(reply.body);
  if (status >= 200 && status < 300) {
    if (answer?.kind !== 'saved') return again({ status: null, answer: null });
    return { state: 'sent', tries, notBefore: 0, trouble: null, saved: answer, sentAt: now };
  }
  const trouble: Trouble = {
    status,
    answer: answer === undefined || answer.kind === 'saved' ? null : answer,
  };
  if (status === 401) return { state: 'waiting', tries, notBefore: now, trouble, saved, sentAt };
  if (status === 403) return again(trouble, 'needs-you');
  const unfinished = status === 409 && trouble.answer === null;
  if (status < 400 || status >= 500 || passing.has(status) || unfinished)
    return again(trouble, 'waiting', askedDelay(reply.retryAfter, now));
  return { state: 'needs-you', tries, notBefore: 0, trouble, saved, sentAt };
}
