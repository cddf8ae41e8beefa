import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { openFile } from './open-file';
import type { OpenFile } from './rows-to-take';
import { queueIsFull, silentMilliseconds } from './running';

/** `recheck` looks only at rows that were changed since the last check. */
export type JobMode = 'check' | 'recheck' | 'add';

/** States of the rows that a job takes. */
export const statesOf = {
  check: ['unread', 'new', 'there', 'needs'],
  recheck: ['unread'],
  add: ['new'],
} as const;

/** Tables of a network that are worked on or wait for it at most: each keeps its process asking once a second. */
export const mostAtWork = 8;

const full = invalid('', 'intake-queue-full');

/** How many other tables of the network have work begun; no two can be claimed at once from here to the end. */
async function othersAtWork({ db, actor }: ReadContext): Promise<number> {
  await db.$queryRaw`select pg_advisory_xact_lock(hashtextextended('intake claims ' || ${actor.networkId}, 0))::text`;
  const [row] = await db.$queryRaw<{ count: number }[]>`
    select app.tables_at_work(make_interval(secs => ${silentMilliseconds / 1000})) as count`;
  return row?.count ?? 0;
}

/** Takes the file for one job; another that is at work keeps it, and where too many wait already it is left as it is. */
export async function claimFile(actor: Actor, id: string, mode: JobMode): Promise<Result<OpenFile>> {
  const claimed = await writeAs<OpenFile>(actor, { origin: 'file_import' }, async (context) => {
    const file = await openFile(context, id);
    if (!file) return notFound;
    const others = await othersAtWork(context);
    const begun = new Date();
    const silent = new Date(begun.getTime() - silentMilliseconds);
    const rows = await context.db.intakeRow.count({
      where: { fileId: id, state: { in: [...statesOf[mode]] } },
    });
    const { count } = await context.db.intakeFile.updateMany({
      where: { id, OR: [{ state: { notIn: ['checking', 'adding'] } }, { heartbeatAt: { lt: silent } }] },
      data: {
        state: mode === 'add' ? 'adding' : 'checking',
        ...{ doneCount: 0, totalCount: rows, heartbeatAt: begun, stopAskedAt: null, trouble: null },
      },
    });
    if (count === 0) return invalid('', 'intake-running');
    return others >= mostAtWork ? full : ok(file);
  });
  if (claimed === full)
    await writeAs(actor, { origin: 'file_import' }, async ({ db }) => {
      await db.intakeFile.updateMany({ where: { id }, data: { trouble: queueIsFull } });
      return ok(null);
    });
  return claimed;
}
