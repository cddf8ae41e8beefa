import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OpenBatch, OpenRun } from '@/lib/growing/open-batch';
import type { DueLine } from '../today/due-line';
import { listDue } from '../today/list-due.query';
import { listOpenBatches } from './list-open-batches.query';

const mostRuns = 50;

/** What a phone needs of the actor's sites to go on without a signal. */
export type Shed = {
  readonly batches: readonly OpenBatch[];
  readonly runs: readonly OpenRun[];
  readonly due: readonly DueLine[];
};

/** Open batches, running treatments and what is due at the actor's sites, in a number of queries that does not grow. */
export async function getShed(context: ReadContext, now: Date): Promise<Shed> {
  const { role, siteIds } = context.actor;
  const runs = await context.db.treatmentRun.findMany({
    where: {
      voidedAt: null,
      endedAt: null,
      site: { leftAt: null },
      // A run that another site lets mine draw on is tended there, and its site is out of sight.
      ...(role === 'member' ? { siteId: { in: [...siteIds] } } : {}),
    },
    select: {
      id: true,
      code: true,
      siteId: true,
      startedAt: true,
      site: { select: { name: true, timeZone: true } },
      method: { select: { nameEn: true, nameEs: true } },
    },
    orderBy: { startedAt: 'desc' },
    take: mostRuns,
  });
  return {
    batches: await listOpenBatches(context),
    due: await listDue(context, now),
    runs: runs.map(({ id, code, siteId, site, method, startedAt }) => ({
      ...{ id, code, siteId },
      siteName: site.name,
      timeZone: site.timeZone,
      methodEn: method.nameEn,
      methodEs: method.nameEs,
      startedAt: startedAt.toISOString(),
    })),
  };
}
