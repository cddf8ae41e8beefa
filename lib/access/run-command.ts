import 'server-only';
import { z } from 'zod';
import { formToObject } from '@/lib/base/form-data';
import { readerLocale } from '@/lib/base/reader-locale';
import type { Failure, Result } from '@/lib/base/result';
import type { Actor } from './actor';
import type { WriteContext } from './context';
import { requireActor } from './current';
import { lastChange } from './last-change';
import { parseInput } from './parse-input';
import { readAs, type WriteOptions, writeAs } from './scoped-db';

/** A command: works in the actor's transaction and answers; anything but ok takes its writes back. */
export type Command<I, T> = (context: WriteContext, input: I) => Promise<Result<T>>;

/** Parses and runs a command for a known actor; forms, the outbox, imports and scripts all come through here. */
export async function runAs<S extends z.ZodType, T>(
  actor: Actor,
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
  options: WriteOptions = {},
): Promise<Result<T>> {
  const input = parseInput(schema, raw, readerLocale(actor));
  if (input.kind !== 'ok') return input;
  return writeAs(actor, options, (context) => command(context, input.value));
}

/** Runs a command with what a form posted; `reason` and `confirmed` are fields of every form. */
export async function runForm<S extends z.ZodType, T>(
  schema: S,
  command: Command<z.output<S>, T>,
  data: FormData,
): Promise<Result<T>> {
  const actor = await requireActor();
  const { confirmed: _confirmed, ...raw } = formToObject(data);
  const confirmed = new Set(data.getAll('confirmed').filter((value) => typeof value === 'string'));
  const reason = data.get('reason');
  const result = await runAs(actor, schema, command, raw, {
    confirmed,
    ...(typeof reason === 'string' && reason.trim() !== '' ? { reason: reason.trim().slice(0, 1000) } : {}),
  });
  return result.kind === 'conflict' ? withLastChange(actor, result, data.get('id')) : result;
}

/** Says who came first and when, so that the form can show both versions. */
async function withLastChange(
  actor: Actor,
  conflict: Extract<Failure, { kind: 'conflict' }>,
  recordId: unknown,
): Promise<Failure> {
  if (typeof recordId !== 'string' || !z.uuid().safeParse(recordId).success) return conflict;
  const changed = await readAs(actor, (context) => lastChange(context, recordId));
  return changed ? { ...conflict, changed } : conflict;
}
