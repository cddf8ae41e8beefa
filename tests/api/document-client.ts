import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020';
import addFormats from 'ajv-formats';
import { openApi } from '@/lib/api/document/open-api';
import { send } from './api-world';

type Json = Record<string, unknown>;
type Media = { content?: Record<string, { schema: Json }> };
type Described = {
  operationId: string;
  parameters: { name: string; in: string; required?: boolean; schema: Json }[];
  requestBody?: Media;
  responses: Record<string, Media>;
};

export const document = openApi('http://localhost/api/v1');

const ajv = new Ajv2020({ strict: false, allErrors: true });
addFormats.default(ajv);
// References of the document's schemas point into the document itself.
ajv.addSchema({ $id: 'document', components: document.components });

function validator(schema: Json): ValidateFunction {
  const text = JSON.stringify(schema).replaceAll('"#/components/', '"document#/components/');
  return ajv.compile(JSON.parse(text) as Json);
}

export type Call = {
  readonly id?: string;
  readonly query?: Readonly<Record<string, string>>;
  readonly body?: Json;
  readonly ifMatch?: string;
  readonly headers?: Readonly<Record<string, string>>;
};

export type Reply = { readonly status: number; readonly body: Json; readonly headers: Headers };

/** What the document says about an operation, with the methods that call it. */
function described(name: string) {
  for (const [path, methods] of Object.entries(document.paths))
    for (const [method, operation] of Object.entries(methods as Record<string, Described>))
      if (operation.operationId === name) return { path, method: method.toUpperCase(), operation };
  throw new Error(`The document has no operation ${name}`);
}

/** Throws unless an answer is one that the document describes. */
export async function checkAnswer(name: string, answer: Response): Promise<Reply> {
  const { operation } = described(name);
  const response = operation.responses[String(answer.status)];
  if (!response) throw new Error(`${name}: the document knows no answer ${answer.status}`);
  const type = answer.headers.get('content-type')?.split(';')[0] ?? '';
  const text = await answer.text();
  if (response.content === undefined) {
    if (text !== '') throw new Error(`${name}: ${answer.status} has a body`);
    return { status: answer.status, body: {}, headers: answer.headers };
  }
  const media = response.content[type];
  if (!media) throw new Error(`${name}: ${answer.status} is ${type}, which the document does not know`);
  const body = JSON.parse(text) as Json;
  const fits = validator(media.schema);
  if (!fits(body)) throw new Error(`${name} ${answer.status}: ${JSON.stringify(fits.errors)} in ${text}`);
  return { status: answer.status, body, headers: answer.headers };
}

/** Whether the document describes a body as one that an operation takes. */
export function takes(name: string, body: unknown): boolean {
  const media = described(name).operation.requestBody?.content?.['application/json'];
  if (!media) throw new Error(`${name} takes no body`);
  return validator(media.schema)(body);
}

/**
 * A client that knows nothing but the document: it finds each operation by its name, sends what the document asks for,
 * and fails on any answer that the document does not describe.
 */
export function clientOf(token: string) {
  return async (name: string, call: Call = {}): Promise<Reply> => {
    const { path, method } = described(name);
    if (call.body !== undefined && !takes(name, call.body))
      throw new Error(`${name}: the document does not take ${JSON.stringify(call.body)}`);
    const query = call.query === undefined ? '' : `?${new URLSearchParams(call.query)}`;
    const answer = await send(method, path.replace('{id}', call.id ?? '') + query, {
      token,
      body: call.body,
      headers: { ...(call.ifMatch === undefined ? {} : { 'if-match': call.ifMatch }), ...call.headers },
    });
    return checkAnswer(name, answer);
  };
}
