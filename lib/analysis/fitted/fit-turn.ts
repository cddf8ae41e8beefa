import 'server-only';
import { randomUUID } from 'node:crypto';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';

export type TurnTimes = {
  /** Between two signs of life of whoever holds the turn. */
  readonly signMilliseconds: number;
  /** Without a sign for so long the holder is taken to have ended. */
  readonly goneMilliseconds: number;
  /** Between two looks of whoever waits. */
  readonly lookMilliseconds: number;
};

/** A process that is busy for half a minute still shows in time. */
const usual: TurnTimes = { signMilliseconds: 5_000, goneMilliseconds: 60_000, lookMilliseconds: 500 };

/**
 * Runs a job while no other process of any server on this database runs one for the actor's network. The turn is a row with
 * signs of life, not a lock of a connection, since a fit takes minutes; all times are the database's clock.
 */
export async function inFitTurn<T>(
  actor: Actor,
  job: () => Promise<T>,
  times: TurnTimes = usual,
): Promise<T> {
  const holder = randomUUID();
  while (!(await take(actor, holder, times)))
    await new Promise((resolve) => setTimeout(resolve, times.lookMilliseconds));
  const signs = setInterval(() => {
    // Without signs another process may fit at the same time, which costs time and changes no answer.
    sign(actor, holder).catch((error: unknown) => warn('no sign of a fit was given', error));
  }, times.signMilliseconds);
  try {
    return await job();
  } finally {
    clearInterval(signs);
    // The work is done and stored; a turn that could not be given back passes on by itself.
    await leave(actor, holder).catch((error: unknown) => warn('the turn of a fit was not given back', error));
  }
}

function warn(what: string, error: unknown): void {
  console.error(JSON.stringify({ level: 'warn', what, why: String(error) }));
}

async function take(actor: Actor, holder: string, { goneMilliseconds }: TurnTimes): Promise<boolean> {
  const rows = await readAs(
    actor,
    ({ db }) => db.$queryRaw<unknown[]>`
      insert into fit_turn (network_id, holder, seen_at)
      values (${actor.networkId}::uuid, ${holder}::uuid, clock_timestamp())
      on conflict (network_id) do update set holder = excluded.holder, seen_at = clock_timestamp()
        where fit_turn.seen_at < clock_timestamp() - make_interval(secs => ${goneMilliseconds}::float8 / 1000)
      returning holder`,
  );
  return rows.length === 1;
}

async function sign(actor: Actor, holder: string): Promise<void> {
  await readAs(
    actor,
    ({ db }) => db.$executeRaw`update fit_turn set seen_at = clock_timestamp()
      where network_id = ${actor.networkId}::uuid and holder = ${holder}::uuid`,
  );
}

async function leave(actor: Actor, holder: string): Promise<void> {
  await readAs(
    actor,
    ({ db }) => db.$executeRaw`update fit_turn set seen_at = 'epoch'
      where network_id = ${actor.networkId}::uuid and holder = ${holder}::uuid`,
  );
}
