import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { WriteContext } from '@/lib/access/context';
import { type WriteOptions, writeAs } from '@/lib/access/scoped-db';
import { invalid, type Result } from '@/lib/base/result';

/** Jobs at work in this process: each holds a connection and a good part of a processor. */
const most = 2;
const holder = globalThis as typeof globalThis & { pinsetTableJobs?: number };
const waiting = invalid('', 'intake-waits');
const betweenTriesMs = 1_000;

/** One job of a network at a time, whichever process works on it; the turn ends with the transaction. */
async function haveTurn({ db, actor }: WriteContext): Promise<boolean> {
  const [row] = await db.$queryRaw<{ mine: boolean }[]>`
    select pg_try_advisory_xact_lock(hashtextextended('intake ' || ${actor.networkId}, 0)) as mine`;
  return row?.mine === true;
}

/**
 * Does long work on a table once it is its turn: two tables at a time in a process, one of a network. `whileWaiting` is
 * called between tries and throws to give up. Whoever waits holds no transaction; no order among them is kept.
 */
export async function inTurn<T>(
  actor: Actor,
  options: WriteOptions,
  work: (context: WriteContext) => Promise<Result<T>>,
  whileWaiting: () => Promise<void>,
): Promise<Result<T>> {
  for (;;) {
    const atWork = holder.pinsetTableJobs ?? 0;
    if (atWork < most) {
      holder.pinsetTableJobs = atWork + 1;
      try {
        const result = await writeAs<T>(actor, options, async (context) =>
          (await haveTurn(context)) ? work(context) : waiting,
        );
        if (result !== waiting) return result;
      } finally {
        holder.pinsetTableJobs -= 1;
      }
    }
    await whileWaiting();
    await new Promise((resolve) => setTimeout(resolve, betweenTriesMs));
  }
}
