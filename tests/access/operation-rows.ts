import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { allConfirmed, now, type World } from './world';

/** Who is asked, in this order, in the five letters of a row. */
export const askers = ['coordinator', 'member', 'neighbour', 'funder', 'stranger'] as const;

/**
 * One operation against a record of Mill Lane. `may`: for coordinator, member of the site, member of another site,
 * funder, coordinator of the other network: `y` done or seen, `-` as if it were not there, `o` done or seen within
 * the asker's own network only.
 */
export type OperationRow = {
  readonly file: string;
  readonly may: string;
  /** What the attempt needs, arranged by the coordinator and not counted as the asker's doing. */
  readonly prepare: (world: World, actor: Actor) => Promise<unknown>;
  readonly attempt: (world: World, actor: Actor, prepared: unknown) => Promise<boolean>;
  /** Of a query: all that it answers. */
  readonly answer?: (world: World, actor: Actor) => Promise<unknown>;
};

/** A command: done or not. A refusal for any other reason than absence means that the row is wrong. */
export function command<S extends z.ZodType, T>(
  file: string,
  may: string,
  schema: S,
  run: Command<z.output<S>, T>,
  raw: (world: World, actor: Actor) => unknown,
): OperationRow {
  return {
    file,
    may,
    prepare: async (world, actor) => raw(world, actor),
    attempt: async (_world, actor, prepared) => {
      const result = await runAs(actor, schema, run, prepared, {
        now,
        confirmed: allConfirmed,
        reason: 'tried',
      });
      if (result.kind === 'ok') return true;
      const absent =
        result.kind === 'not-found' ||
        (result.kind === 'invalid' &&
          result.errors.every(({ code }) => ['not-found', 'not-an-option'].includes(code)));
      if (!absent) throw new Error(`${file} as ${actor.name}: ${JSON.stringify(result)}`);
      return false;
    },
  };
}

/** A query: whether it showed the record asked for. */
export function query<T>(
  file: string,
  may: string,
  ask: (context: ReadContext, world: World) => Promise<T>,
  seen: (answer: T, world: World) => boolean,
): OperationRow {
  return {
    file,
    may,
    prepare: async () => undefined,
    attempt: (world, actor) => readAs(actor, async (context) => seen(await ask(context, world), world)),
    answer: (world, actor) => readAs(actor, (context) => ask(context, world)),
  };
}
