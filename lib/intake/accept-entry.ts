import 'server-only';
import { actorInNetwork } from '@/lib/access/actor-in-network';
import { parseInput } from '@/lib/access/parse-input';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import type { Signed } from '@/lib/access/session-lookup';
import type { Failure } from '@/lib/base/result';
import { compareEntry, type EntryComparison } from '@/lib/records/entry/compare-entry.query';
import { type EntryKind, entryInput } from '@/lib/records/entry/entry.input';
import { type TakenEntry, takeEntry } from '@/lib/records/entry/take-entry.command';
import { fromSameOrigin } from './from-same-origin';
import { rateLimit } from './rate-limit';
import { readJson } from './read-json';
import { requestHash } from './request-hash';

export const mostEntryKilobytes = 64;
const mostBytes = mostEntryKilobytes * 1024;
// A phone that was away for a season sends some hundred entries at once; a loop gone wild sends more.
const limit = rateLimit(600, 10);

/** What a command answers other than ok and a conflict, which carries both versions. */
export type Told = Exclude<Failure, { kind: 'conflict' }>;

type Refused = {
  readonly kind: 'failed';
  /** As in HTTP. */
  readonly status: number;
  readonly failure: Told;
  readonly entryKind?: EntryKind;
  readonly retryAfterSeconds?: number;
};

/** What became of a posted entry. */
export type AcceptedEntry =
  | { readonly kind: 'saved'; readonly taken: TakenEntry }
  | Refused
  | { readonly kind: 'conflict'; readonly entryKind: EntryKind; readonly comparison: EntryComparison };

function refused(
  status: number,
  code: string,
  more: { readonly max?: number; readonly retryAfterSeconds?: number } = {},
): Refused {
  const { max, retryAfterSeconds } = more;
  const error = max === undefined ? { field: '', code } : { field: '', code, values: { max } };
  return {
    ...{ kind: 'failed', status, failure: { kind: 'invalid', errors: [error] } },
    ...(retryAfterSeconds === undefined ? {} : { retryAfterSeconds }),
  };
}

/** The answer when the server itself cannot save just now: the phone keeps the entry and sends it again. */
export const serverBusy = (seconds: number): Refused =>
  refused(503, 'server-busy', { retryAfterSeconds: seconds });

/**
 * Takes one entry of an outbox: checks where it comes from, who sends it and whose it is, and runs it in the entry's
 * own network whichever is open in the session. `undoReason` is stored with a record that the entry takes back.
 */
export async function acceptEntry(
  request: Request,
  signed: Signed | undefined,
  undoReason: string,
  now: Date = new Date(),
): Promise<AcceptedEntry> {
  if (!fromSameOrigin(request.headers)) return refused(403, 'other-origin');
  if (!signed) return refused(401, 'sign-in-first');
  const { person } = signed;
  const wait = limit.take(person.personId, now.getTime());
  if (wait > 0) return refused(429, 'rate-limited', { retryAfterSeconds: wait });
  const body = await readJson(request, mostBytes);
  if (body.kind === 'wrong-type') return refused(415, 'not-json');
  if (body.kind === 'too-large') return refused(413, 'entry-too-large', { max: mostEntryKilobytes });
  if (body.kind === 'not-json') return refused(400, 'entry-unreadable');
  const raw = body.value;
  if (typeof raw === 'object' && raw !== null && 'kind' in raw && raw.kind === 'photo')
    return refused(422, 'photo-elsewhere');
  const entry = parseInput(entryInput, raw);
  if (entry.kind !== 'ok' || request.headers.get('idempotency-key')?.toLowerCase() !== entry.value.key)
    return refused(400, 'entry-unreadable');
  const { kind, personId, networkId, confirmed, input } = entry.value;
  if (personId !== person.personId) return refused(403, 'other-account');
  const actor =
    signed.actor?.networkId === networkId ? signed.actor : await actorInNetwork(person, networkId);
  if (!actor) return refused(403, 'other-account');
  const { key: _key, ...content } = raw as Record<string, unknown>;
  const reason = kind === 'undo' ? undoReason : typeof input.reason === 'string' ? input.reason.trim() : '';
  const result = await writeAs(
    actor,
    {
      origin: 'offline',
      confirmed: new Set(confirmed),
      now,
      ...(reason === '' ? {} : { reason: reason.slice(0, 1000) }),
    },
    (context) => takeEntry(context, { ...entry.value, requestHash: requestHash(content), undoReason }),
  );
  switch (result.kind) {
    case 'ok':
      return { kind: 'saved', taken: result.value };
    case 'conflict': {
      const comparison = await readAs(actor, (context) => compareEntry(context, entry.value));
      return comparison
        ? { kind: 'conflict', entryKind: kind, comparison }
        : { kind: 'failed', status: 404, entryKind: kind, failure: { kind: 'not-found' } };
    }
    case 'not-found':
      return { kind: 'failed', status: 404, entryKind: kind, failure: result };
    case 'confirm':
      return { kind: 'failed', status: 409, entryKind: kind, failure: result };
    case 'invalid':
      return result.errors.some(({ code }) => code === 'try-again')
        ? serverBusy(1)
        : { kind: 'failed', status: 422, entryKind: kind, failure: result };
  }
}
