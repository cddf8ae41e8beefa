import 'server-only';
import { notFound, type Result } from '@/lib/base/result';
import { unscopedDatabase } from '@/lib/database/client';
import type { Prisma } from '@/lib/database/generated/client';
import type { RecordOrigin } from '@/lib/database/generated/enums';
import type { ActingToken, Actor } from './actor';
import type { ReadContext, WriteContext } from './context';
import { failureOfError } from './failure-of-error';
import { toldTruly } from './told-truly';

/** A transaction in which the database knows who asks. The type has no way to open another one. */
export type ScopedDb = Prisma.TransactionClient;

class RolledBack<T> extends Error {
  constructor(readonly result: Result<T>) {
    super('rolled back');
  }
}

type Settings = {
  personId: string;
  networkId: string;
  token?: ActingToken;
  reason?: string;
  origin?: RecordOrigin;
};

const asking = ({ personId, networkId, token }: Actor): Settings =>
  token === undefined ? { personId, networkId } : { personId, networkId, token };

/**
 * Sets who asks for the length of one transaction. Row policies make a statement look dearer to the database than it is;
 * compiling it (jit) takes several times as long as running it.
 */
async function introduce(db: ScopedDb, settings: Settings): Promise<void> {
  const scope = settings.token?.siteScope;
  await db.$queryRaw`select set_config('app.person_id', ${settings.personId}, true),
    set_config('app.network_id', ${settings.networkId}, true),
    set_config('app.site_scope', ${scope === undefined ? '' : `{${scope.join(',')}}`}, true),
    set_config('app.reason', ${settings.reason ?? ''}, true),
    set_config('app.origin', ${settings.origin ?? ''}, true), set_config('jit', 'off', true)`;
}

function transactionLimits({ longestMilliseconds }: WriteOptions): { timeout?: number } {
  return longestMilliseconds === undefined ? {} : { timeout: longestMilliseconds };
}

/** Runs queries as the actor, all in one transaction. */
export function readAs<T>(actor: Actor, ask: (context: ReadContext) => Promise<T>): Promise<T> {
  return unscopedDatabase().$transaction(async (db) => {
    await introduce(db, asking(actor));
    return toldTruly(db, () => ask({ db, actor }));
  });
}

/** An export may take this long; a page never does. */
const longestSnapshotMs = 15 * 60_000;

/**
 * Runs many queries as the actor over one unchanging state of the data, for a file made from all of it. It only
 * reads, and holds a connection until it ends: write to a file, not to whoever waits for it.
 */
export function readSnapshot<T>(actor: Actor, ask: (context: ReadContext) => Promise<T>): Promise<T> {
  return unscopedDatabase().$transaction(
    async (db) => {
      await db.$executeRaw`set transaction read only`;
      await introduce(db, asking(actor));
      return toldTruly(db, () => ask({ db, actor }));
    },
    { isolationLevel: 'RepeatableRead', timeout: longestSnapshotMs },
  );
}

export type WriteOptions = {
  readonly reason?: string;
  readonly origin?: RecordOrigin;
  readonly confirmed?: ReadonlySet<string>;
  readonly now?: Date;
  /** How long the transaction may take; for work in the background that is longer than a request. */
  readonly longestMilliseconds?: number;
};

/**
 * Runs a command as the actor: commits when it answers ok, takes everything back otherwise. What the row
 * policies refuse is answered as not found, and so is every write of a token that only reads; a broken rule that no
 * command foresaw is thrown on.
 */
export async function writeAs<T>(
  actor: Actor,
  options: WriteOptions,
  command: (context: WriteContext) => Promise<Result<T>>,
): Promise<Result<T>> {
  const origin = options.origin ?? 'form';
  if (actor.token?.mayWrite === false) return notFound;
  try {
    return await unscopedDatabase().$transaction(async (db) => {
      await introduce(db, {
        ...asking(actor),
        origin,
        ...(options.reason === undefined ? {} : { reason: options.reason }),
      });
      const context: WriteContext = {
        db,
        actor,
        origin,
        confirmed: options.confirmed ?? new Set(),
        now: options.now ?? new Date(),
      };
      const result = await toldTruly(
        db,
        () => command(context),
        ({ kind }) => kind !== 'ok',
      );
      if (result.kind !== 'ok') throw new RolledBack(result);
      return result;
    }, transactionLimits(options));
  } catch (error) {
    if (error instanceof RolledBack) return error.result as Result<T>;
    const failure = failureOfError(error);
    if (failure !== undefined) return failure;
    throw error;
  }
}

/** For the person themselves, before or without a network: their session, account and preferences. */
export function asPerson<T>(personId: string, ask: (db: ScopedDb) => Promise<T>): Promise<T> {
  return unscopedDatabase().$transaction(async (db) => {
    await introduce(db, { personId, networkId: '' });
    return ask(db);
  });
}

/** For the person within a network of theirs, before there is an actor; a network that is not theirs shows nothing. */
export function asPersonIn<T>(
  personId: string,
  networkId: string,
  ask: (db: ScopedDb) => Promise<T>,
): Promise<T> {
  return unscopedDatabase().$transaction(async (db) => {
    await introduce(db, { personId, networkId });
    return ask(db);
  });
}

/**
 * For nobody: only the look-up functions of the database answer here. Each statement is a transaction of its own, since
 * every page begins by looking its session up, and a beginning and an end would be two more ways to the database.
 */
export function asNobody<T>(ask: (db: ScopedDb) => Promise<T>): Promise<T> {
  return ask(unscopedDatabase());
}
