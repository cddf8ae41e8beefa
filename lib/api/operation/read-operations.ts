import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { notFound, ok, type Result } from '@/lib/base/result';
import { type Filters, type Resource, readOne } from '../resource/resource';
import type { Asked, ReadOperation, Told } from './operation';

const mostRows = 200;
const usualRows = 50;

const listQuery = {
  limit: z.coerce.number().int().min(1).max(mostRows).default(usualRows),
  after: z.uuid().describe('Id of the last row of the page before: go on with older ones.').optional(),
  before: z.uuid().describe('Id of the first row of the page after: go back to newer ones.').optional(),
  voided: z.enum(['yes', 'no']).default('no').describe('Whether voided records are listed, too.'),
};

/** Names of a kind in an `operationId`: `substrate-lots` is SubstrateLots. */
export function nameOf(kind: Resource): string {
  return kind.name.replace(/(^|-)([a-z])/g, (_all, _dash, letter: string) => letter.toUpperCase());
}

function queryString(asked: Filters, changed: Filters): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries({ ...asked, after: undefined, before: undefined, ...changed }))
    if (value !== undefined) query.set(name, value);
  return query.toString();
}

/**
 * A page of a list, latest made first. Pages follow the id of a row (UUIDv7 sorts by time of making), so that what is added
 * meanwhile moves nothing: each row that was there at the first page is met once.
 */
async function readList(
  kind: Resource,
  actor: Parameters<ReadOperation['read']>[0],
  { query }: Asked,
): Promise<Result<Told>> {
  const { limit, after, before, voided, ...filters } = query;
  const size = Number(limit ?? usualRows);
  const back = before !== undefined && after === undefined;
  const place = back ? { id: { gt: before } } : after === undefined ? {} : { id: { lt: after } };
  const where = { ...place, ...(voided === 'yes' ? {} : { voidedAt: null }) };
  const page = { orderBy: { id: back ? ('asc' as const) : ('desc' as const) }, take: size + 1 };
  const rows = await readAs(actor, (context) => kind.read(context, where, page, filters));
  const more = rows.length > size;
  const shown = back ? rows.slice(0, size).toReversed() : rows.slice(0, size);
  const [first] = shown;
  const last = shown.at(-1);
  const older = last !== undefined && (back || more) ? queryString(query, { after: last.id }) : undefined;
  const newer =
    first !== undefined && (back ? more : after !== undefined)
      ? queryString(query, { before: first.id })
      : undefined;
  return ok({
    status: 200,
    body: { items: shown.map(({ body }) => body) },
    pages: {
      ...(older === undefined ? {} : { next: older }),
      ...(newer === undefined ? {} : { prev: newer }),
    },
  });
}

/** The list and the single record of a kind. */
export function readOperations(kind: Resource, area: string): readonly ReadOperation[] {
  const filters = Object.fromEntries(
    Object.entries(kind.filters).map(([name, schema]) => [name, schema.optional()]),
  );
  return [
    {
      name: `list${nameOf(kind)}`,
      method: 'GET',
      path: `/${kind.name}`,
      tag: kind.name,
      summary: `List ${kind.name.replace('-', ' ')}`,
      about: kind.about,
      of: 'list',
      area,
      query: z.strictObject({ ...listQuery, ...filters }),
      answer: z.object({ items: z.array(kind.schema) }),
      read: (actor, asked) => readList(kind, actor, asked),
    },
    {
      name: `read${nameOf(kind)}`,
      method: 'GET',
      path: `/${kind.name}/{id}`,
      tag: kind.name,
      summary: `Read ${kind.one}`,
      of: 'one',
      area,
      query: z.strictObject({}),
      answer: kind.schema,
      read: (actor, { id }) =>
        readAs(actor, async (context) => {
          const row = await readOne(context, kind, id);
          return row ? ok<Told>({ status: 200, body: row.body, revision: row.revision }) : notFound;
        }),
    },
  ];
}
