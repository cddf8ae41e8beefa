import type { z } from 'zod';
import type { Operation } from '../operation/operation';
import { operations } from '../operation/operations';
import { answerSchema, type JsonSchema, jsonSchema, namedSchemas } from './json-schema';
import { problemSchema } from './problem-schema';

/** Raised with every change that an existing script could notice. */
const version = '1.0.0';

const header = (description: string, schema: JsonSchema = { type: 'string' }) => ({ description, schema });
const limits = {
  RateLimit: header('Requests that may pass at once, and seconds until all may.'),
  'RateLimit-Policy': header('How many requests of a token may pass in how many seconds.'),
};

const parameters = {
  id: { name: 'id', in: 'path', required: true, schema: { type: 'string', format: 'uuid' } },
  idempotencyKey: {
    name: 'Idempotency-Key',
    in: 'header',
    required: true,
    description:
      'Of your own making, new for each write: the same request sent again under it has its first answer and no second effect. Kept for good.',
    schema: { type: 'string', minLength: 1, maxLength: 255 },
  },
  ifMatch: {
    name: 'If-Match',
    in: 'header',
    required: true,
    description: 'The ETag of the record as you read it; when somebody changed it since, the answer is 412.',
    schema: { type: 'string', pattern: '^"[1-9][0-9]*"$' },
  },
  ifNoneMatch: {
    name: 'If-None-Match',
    in: 'header',
    description: 'An ETag: when nothing has changed, the answer is 304 without a body.',
    schema: { type: 'string' },
  },
} as const;

function queryParameters(query: z.ZodObject): JsonSchema[] {
  return Object.entries(query.shape).map(([name, schema]) => {
    const { description, ...told } = jsonSchema(schema as z.ZodType, 'input');
    return { name, in: 'query', schema: told, ...(description === undefined ? {} : { description }) };
  });
}

const problem = (description: string, headers: JsonSchema = {}) => ({
  description,
  headers: { ...limits, ...headers },
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
});

const common = {
  400: problem('The request cannot be read, or a parameter or the key is missing or wrong.'),
  401: { ...problem('No token, or one that does not work (any more).'), headers: {} },
  404: problem('Not there, or not yours: the two are never told apart.'),
  406: { ...problem('Only JSON is answered.'), headers: {} },
  429: problem('Too many requests.', { 'Retry-After': header('Seconds.') }),
  503: {
    ...problem('Something broke on our side; nothing was saved.'),
    headers: { 'Retry-After': header('Seconds.') },
  },
};
const ofWrites = {
  403: problem('The token only reads.'),
  409: problem('Possible but unlikely: send it again with the codes in `confirmed` if it is right.'),
  413: problem('Larger than 64 kB.'),
  415: problem('Not sent as application/json.'),
  422: problem(
    'Refused: each error points at a field and says what to do. Or the key was used for another request.',
  ),
};
const ofChanges = {
  412: problem('Changed since it was read.', { ETag: header('As it is now.') }),
  428: problem('If-Match is missing.'),
};

function success(operation: Operation) {
  const etag = { ETag: header('Of a record: its revision, to be sent as If-Match.') };
  const headers = {
    ...limits,
    ...etag,
    ...(operation.method === 'GET' && operation.of === 'list'
      ? { Link: header('rel="next" (older) and rel="prev" (newer) pages, RFC 8288.') }
      : {}),
    ...(operation.method !== 'GET' && operation.status === 201
      ? { Location: header('Of the record made.') }
      : {}),
  };
  return {
    description: operation.method === 'GET' ? 'As it is.' : 'Saved.',
    headers,
    content: { 'application/json': { schema: answerSchema(operation.answer) } },
  };
}

function operationObject(operation: Operation) {
  const { name, tag, summary, about, path } = operation;
  const inPath = path.includes('{id}') ? [parameters.id] : [];
  const head = {
    operationId: name,
    tags: [tag],
    summary,
    ...(about === undefined ? {} : { description: about }),
  };
  if (operation.method === 'GET') {
    const later =
      operation.of === 'figures'
        ? { 202: { ...success(operation), description: 'Being worked out; ask again.' } }
        : {};
    return {
      ...head,
      parameters: [...inPath, ...queryParameters(operation.query), parameters.ifNoneMatch],
      responses: {
        200: success(operation),
        ...later,
        304: { description: 'Not changed.', headers: limits },
        ...common,
      },
    };
  }
  return {
    ...head,
    parameters: [...inPath, parameters.idempotencyKey, ...(operation.ifMatch ? [parameters.ifMatch] : [])],
    requestBody: {
      required: true,
      content: { 'application/json': { schema: jsonSchema(operation.body.json, 'input') } },
    },
    responses: {
      [operation.status]: success(operation),
      ...common,
      ...ofWrites,
      ...(operation.ifMatch ? ofChanges : {}),
    },
  };
}

/** The whole API as OpenAPI 3.1 has it, made from the list of operations and the inputs of their commands. */
export function openApi(server: string) {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const operation of operations) {
    paths[operation.path] = {
      ...paths[operation.path],
      [operation.method.toLowerCase()]: operationObject(operation),
    };
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Pinset',
      version,
      description:
        'Batch records, contamination rates and biological efficiency of a network of mushroom growers, for scripts and sensors. Masses are whole grams, temperatures °C, calendar dates those of the site, moments ISO 8601 with an offset. Made with a token of /account/tokens: it acts as the person who made it, and may do no more than they may.',
      license: { name: 'For members of the network', identifier: 'LicenseRef-network' },
    },
    servers: [{ url: server }],
    security: [{ token: [] }],
    tags: [...new Set(operations.map(({ tag }) => tag))].map((name) => ({ name })),
    paths,
    components: {
      securitySchemes: { token: { type: 'http', scheme: 'bearer', description: 'pinset_…' } },
      schemas: { ...namedSchemas(), Problem: problemSchema },
    },
  };
}
