import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { type Command, runAs } from '@/lib/access/run-command';

/** The day on which the tables are typed in. */
export const enteredAt = new Date('2026-07-20T15:00:00Z');

/**
 * The one question answered with yes: a treatment that the source does not tell has no kind of its own and stands
 * as untreated, which does not suit every species.
 */
const confirmed: ReadonlySet<string> = new Set(['method-unsuited']);

/** Runs a command the way a form does, every other question still open; anything but ok fails. */
export async function enter<S extends z.ZodType, T>(
  actor: Actor,
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
): Promise<T> {
  const result = await runAs(actor, schema, command, raw, { now: enteredAt, confirmed });
  if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
  return result.value;
}
