import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import type { Result } from '@/lib/base/result';
import { readJson } from '@/lib/intake/read-json';
import { requestHash } from '@/lib/intake/request-hash';
import type { WriteOperation } from '../operation/operation';
import { type ApiAnswer, type ProblemError, refusal } from './answer';
import { revisionIn } from './entity-tag';
import { idempotencyKey } from './idempotency-key';
import { sentProblems } from './sent-problem';
import { type Once, writeOnce } from './write-once';

const mostKilobytes = 64;

type Taken =
  | { readonly kind: 'refused'; readonly answer: ApiAnswer }
  | { readonly kind: 'done'; readonly result: Result<Once> };

/** Text of a body that no database can store. */
const holdsNul = (text: string) => text.includes('\\u0000') || text.includes('\0');

function refused(answer: ApiAnswer): Taken {
  return { kind: 'refused', answer };
}

/** What is wrong with the shape of what was sent is told by the names that were sent, which no form has. */
function withErrors(errors: readonly ProblemError[]): ApiAnswer {
  const answer = refusal('refused', undefined);
  return answer.kind === 'problem'
    ? { ...answer, problem: { ...answer.problem, area: 'sent', errors } }
    : answer;
}

/** Takes a write: its headers and the shape of its body here, then once and for all under its key. */
export async function takeWrite(
  request: Request,
  operation: WriteOperation,
  id: string,
  actor: Actor,
  now: Date,
): Promise<Taken> {
  const sent = await readJson(request, mostKilobytes * 1024);
  if (sent.kind === 'wrong-type')
    return refused(refusal('not-json', { code: 'api-send-json', header: 'Content-Type' }));
  if (sent.kind === 'too-large')
    return refused(refusal('too-large', { code: 'api-too-large', values: { max: mostKilobytes } }));
  if (sent.kind === 'not-json') return refused(refusal('unreadable', { code: 'api-not-json' }));
  const key = idempotencyKey(request.headers.get('idempotency-key'));
  if (key === undefined)
    return refused(refusal('unreadable', { code: 'api-key-needed', header: 'Idempotency-Key' }));
  const revision = operation.ifMatch ? revisionIn(request.headers.get('if-match')) : undefined;
  if (revision === 'missing')
    return refused(refusal('revision-needed', { code: 'api-revision-needed', header: 'If-Match' }));
  if (revision === 'other')
    return refused(refusal('changed', { code: 'api-other-revision', header: 'If-Match' }));
  if (holdsNul(JSON.stringify(sent.value)))
    return refused(withErrors([{ field: '', pointer: '', code: 'control-characters' }]));
  const parsed = operation.body.json.safeParse(sent.value, { reportInput: true });
  if (!parsed.success) return refused(withErrors(sentProblems(parsed.error)));
  const { confirmed, ...body } = parsed.data as Record<string, unknown> & { confirmed?: string[] };
  const input = operation.body.toInput(body);
  const reason = typeof input.reason === 'string' ? input.reason.trim() : '';
  const { method } = operation;
  // Answers to questions do not make it another request.
  const hash = requestHash({ method, path: operation.path, id, revision: revision ?? null, body });
  const result = await writeAs(
    actor,
    {
      origin: 'api',
      confirmed: new Set(confirmed ?? []),
      now,
      ...(reason === '' ? {} : { reason: reason.slice(0, 1000) }),
    },
    (context) =>
      writeOnce(context, { tokenId: actor.token?.id ?? '', key, requestHash: hash }, () =>
        operation.write(context, { id, query: {}, now, input, revision }),
      ),
  );
  return { kind: 'done', result };
}
