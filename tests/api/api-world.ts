import { answerApi } from '@/app/api/v1/answer-api';
import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import { makeToken } from '@/lib/records/token/make-token.command';
import { makeTokenInput } from '@/lib/records/token/token.input';

/** A token of a person's own; `more` as its form would send it. */
export async function tokenOf(actor: Actor, more: Readonly<Record<string, unknown>> = {}): Promise<string> {
  const input = makeTokenInput.parse({ name: 'Script', scope: 'write', ...more });
  const made = await writeAs(actor, {}, (context) => makeToken(context, input));
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  return made.value.secret;
}

export type Send = {
  readonly token?: string | undefined;
  readonly body?: unknown;
  /** The body as it is sent, instead of `body` as JSON. */
  readonly text?: string;
  readonly headers?: Readonly<Record<string, string>>;
};

let keys = 0;

/** Sends one request to the real handler; a write gets a key of its own unless one is given. */
export function send(method: string, address: string, { token, body, text, headers = {} }: Send = {}) {
  const url = new URL(`http://localhost/api/v1${address}`);
  const sent = text ?? (body === undefined ? undefined : JSON.stringify(body));
  keys += 1;
  const request = new Request(url, {
    method,
    headers: {
      ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
      ...(sent === undefined ? {} : { 'content-type': 'application/json' }),
      ...(method === 'GET' ? {} : { 'idempotency-key': `test-${keys}` }),
      ...headers,
    },
    ...(sent === undefined ? {} : { body: sent }),
  });
  return answerApi(request, url.pathname.replace('/api/v1/', '').split('/'));
}
