import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { lookUpToken } from '@/lib/access/token-lookup';
import type { Result } from '@/lib/base/result';
import type { Operation, Told } from '../operation/operation';
import { acceptsJson } from './accepts-json';
import { type Answered, type ApiAnswer, refusal } from './answer';
import { namesTag, tagOf, weakTagOf } from './entity-tag';
import { failureAnswer } from './failure-answer';
import { findOperation } from './find-operation';
import { sentProblems } from './sent-problem';
import { takeWrite } from './take-write';
import { passToken } from './token-limit';

/** Where the API stands, for the addresses that it answers with. */
export const apiPath = '/api/v1';

function bearer(headers: Headers): string | undefined {
  return /^Bearer ([\w-]{1,200})$/i.exec(headers.get('authorization')?.trim() ?? '')?.[1];
}

/** The neighbouring pages of a list as RFC 8288 has it. */
function linkHeader(path: string, { next, prev }: NonNullable<Told['pages']>): string {
  const link = (query: string, rel: string) => `<${apiPath}${path}?${query}>; rel="${rel}"`;
  return [
    ...(next === undefined ? [] : [link(next, 'next')]),
    ...(prev === undefined ? [] : [link(prev, 'prev')]),
  ].join(', ');
}

function toldAnswer(
  operation: Operation,
  request: Request,
  told: Told,
  more: Record<string, string>,
): ApiAnswer {
  const tag = told.revision === undefined ? weakTagOf(told.body) : tagOf(told.revision);
  const link = told.pages === undefined ? '' : linkHeader(operation.path, told.pages);
  const headers = {
    ...more,
    ...(operation.method === 'GET' || told.revision !== undefined ? { etag: tag } : {}),
    ...(link === '' ? {} : { link }),
    ...(told.location === undefined ? {} : { location: `${apiPath}${told.location}` }),
    ...(told.retryAfterSeconds === undefined ? {} : { 'retry-after': String(told.retryAfterSeconds) }),
  };
  const unchanged =
    operation.method === 'GET' && told.status === 200 && namesTag(request.headers.get('if-none-match'), tag);
  return unchanged
    ? { kind: 'unchanged', headers }
    : { kind: 'told', status: told.status, body: told.body, headers };
}

async function run(
  request: Request,
  operation: Operation,
  id: string,
  actor: Actor,
  now: Date,
): Promise<ApiAnswer> {
  if (operation.method !== 'GET') {
    const taken = await takeWrite(request, operation, id, actor, now);
    if (taken.kind === 'refused') return taken.answer;
    return finish(operation, request, taken.result, {
      ...(taken.result.kind === 'ok' && taken.result.value.repeated ? { 'answered-before': 'true' } : {}),
    });
  }
  const parsed = operation.query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!parsed.success) {
    const [first] = sentProblems(parsed.error);
    const { code = 'not-an-option', field = '', values } = first ?? {};
    return refusal('unreadable', {
      field,
      code,
      parameter: field,
      ...(values === undefined ? {} : { values }),
    });
  }
  const query = Object.fromEntries(
    Object.entries(parsed.data).map(([name, value]) => [
      name,
      value === undefined ? undefined : String(value),
    ]),
  );
  return finish(operation, request, await operation.read(actor, { id, query, now }), {});
}

function finish(
  operation: Operation,
  request: Request,
  result: Result<Told>,
  more: Record<string, string>,
): ApiAnswer {
  return result.kind === 'ok'
    ? toldAnswer(operation, request, result.value, more)
    : failureAnswer(operation, result);
}

/**
 * Answers a request of a script: in this order whether there is such an address and method, whether it takes JSON, whose
 * the token is, whether there were too many, what the token may; then the operation's own rules.
 */
export async function answerRequest(
  request: Request,
  segments: readonly string[],
  now: Date = new Date(),
): Promise<Answered> {
  const nobody = (answer: ApiAnswer): Answered => ({ answer, actor: undefined });
  const found = findOperation(request.method, segments);
  if (found.kind === 'not-there') return nobody(refusal('not-there', { code: 'api-no-address' }));
  if (found.kind === 'wrong-method')
    return nobody(refusal('wrong-method', { code: 'api-wrong-method' }, { allow: found.allow }));
  if (!acceptsJson(request.headers.get('accept')))
    return nobody(refusal('not-acceptable', { code: 'api-json-only', header: 'Accept' }));
  const secret = bearer(request.headers);
  const actor = secret === undefined ? undefined : await lookUpToken(secret);
  if (actor?.token === undefined) {
    const challenge = secret === undefined ? 'Bearer' : 'Bearer error="invalid_token"';
    const code = secret === undefined ? 'api-token-needed' : 'api-token-unknown';
    return nobody(
      refusal('token-needed', { code, header: 'Authorization' }, { 'www-authenticate': challenge }),
    );
  }
  const passage = passToken(actor.token.id, now);
  const answer =
    passage.wait > 0
      ? refusal('too-many', { code: 'rate-limited' }, { 'retry-after': String(passage.wait) })
      : found.operation.method !== 'GET' && !actor.token.mayWrite
        ? refusal('not-allowed', { code: 'api-reads-only' })
        : await run(request, found.operation, found.id, actor, now);
  return { actor, answer: withHeaders(answer, passage.headers) };
}

function withHeaders(answer: ApiAnswer, headers: Readonly<Record<string, string>>): ApiAnswer {
  return answer.kind === 'problem'
    ? { ...answer, problem: { ...answer.problem, headers: { ...answer.problem.headers, ...headers } } }
    : { ...answer, headers: { ...answer.headers, ...headers } };
}
