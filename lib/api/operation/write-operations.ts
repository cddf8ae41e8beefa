import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import type { Command } from '@/lib/access/run-command';
import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { type VoidableKind, voidRecordInput } from '@/lib/records/void/void-record.input';
import { apiBody } from '../body';
import { type Resource, readOne } from '../resource/resource';
import type { Told, WriteOperation } from './operation';
import { nameOf } from './read-operations';

/** Runs a command with what was sent, by the same input as its form. */
async function run<S extends z.ZodType, T>(
  context: WriteContext,
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
): Promise<Result<T>> {
  const input = parseInput(schema, raw, readerLocale(context.actor));
  return input.kind === 'ok' ? command(context, input.value) : input;
}

/** The record as it stands after the write. */
async function tell(
  context: WriteContext,
  kind: Resource,
  id: string,
  status: 200 | 201,
): Promise<Result<Told>> {
  const row = await readOne(context, kind, id);
  if (!row) return notFound;
  const made = status === 201 ? { location: `/${kind.name}/${id}` } : {};
  return ok({ status, body: row.body, revision: row.revision, ...made });
}

/** Makes a record; its id may be the script's own (a UUID, best of version 7). */
export function create<S extends z.ZodType, T>(
  kind: Resource,
  area: string,
  schema: S,
  command: Command<z.output<S>, T>,
): WriteOperation {
  return {
    name: `create${nameOf(kind)}`,
    method: 'POST',
    path: `/${kind.name}`,
    tag: kind.name,
    summary: `Record ${kind.one}`,
    area,
    body: apiBody(schema),
    ifMatch: false,
    status: 201,
    answer: kind.schema,
    write: async (context, { input }) => {
      const id = typeof input.id === 'string' ? input.id.toLowerCase() : newId();
      // What is there may say something else; the same write sent again has its answer from its key.
      if (input.id !== undefined && (await readOne(context, kind, id))) return invalid('id', 'already-there');
      const done = await run(context, schema, command, { ...input, id });
      return done.kind === 'ok' ? tell(context, kind, id, 201) : done;
    },
  };
}

/** Corrects a record: the whole of it, with the reason. */
export function correct<S extends z.ZodType, T>(
  kind: Resource,
  area: string,
  schema: S,
  command: Command<z.output<S>, T>,
): WriteOperation {
  return {
    name: `correct${nameOf(kind)}`,
    method: 'PUT',
    path: `/${kind.name}/{id}`,
    tag: kind.name,
    summary: `Correct ${kind.one}`,
    about: 'The whole record as it should be, with the reason; what is left out is emptied.',
    area,
    body: apiBody(schema, ['id', 'revision']),
    ifMatch: true,
    status: 200,
    answer: kind.schema,
    write: async (context, { id, input, revision }) => {
      const done = await run(context, schema, command, { ...input, id, revision });
      return done.kind === 'ok' ? tell(context, kind, id, 200) : done;
    },
  };
}

/** A step of a record's life, such as closing a batch. `idName`: what the command calls its id. */
export function step<S extends z.ZodType, T>(
  kind: Resource,
  area: string,
  { verb, summary, idName, ifMatch }: { verb: string; summary: string; idName: string; ifMatch: boolean },
  schema: S,
  command: Command<z.output<S>, T>,
): WriteOperation {
  return {
    name: `${verb}${nameOf(kind)}`,
    method: 'POST',
    path: `/${kind.name}/{id}/${verb}`,
    tag: kind.name,
    ...{ summary, area, ifMatch },
    body: apiBody(schema, [idName, 'revision']),
    status: 200,
    answer: kind.schema,
    write: async (context, { id, input, revision }) => {
      const done = await run(context, schema, command, { ...input, [idName]: id, revision });
      return done.kind === 'ok' ? tell(context, kind, id, 200) : done;
    },
  };
}

/** Takes a record out of every figure, with a reason; nothing is ever deleted. */
export function voiding(kind: Resource, table: VoidableKind): WriteOperation {
  return {
    name: `void${nameOf(kind)}`,
    method: 'POST',
    path: `/${kind.name}/{id}/void`,
    tag: kind.name,
    summary: `Void ${kind.one}`,
    about: 'Takes it out of every figure, with a reason. It stays readable; nothing is ever deleted.',
    area: 'common',
    body: apiBody(voidRecordInput, ['kind', 'id', 'revision']),
    ifMatch: true,
    status: 200,
    answer: kind.schema,
    write: async (context, { id, input, revision }) => {
      // Only a record of this kind, whatever else has the id.
      if (!(await readOne(context, kind, id))) return notFound;
      const done = await run(context, voidRecordInput, voidRecord, { ...input, kind: table, id, revision });
      return done.kind === 'ok' ? tell(context, kind, id, 200) : done;
    },
  };
}
