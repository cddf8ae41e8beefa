import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { dueOfRun } from '@/lib/growing/due/due-of-run';
import { methodWindow } from '../treatment/method-window';
import type { RunLine } from './due-line';

/** A load that is out is asked about for two weeks; the rule says so more exactly. */
const lookBackDays = 15;
const mostRuns = 200;

/** What is due of the treatment runs made at the actor's own sites: those running, and loads not spawned yet. */
export async function runLines({ db, actor }: ReadContext, now: Date): Promise<RunLine[]> {
  const since = new Date(now.getTime() - lookBackDays * 86_400_000);
  const runs = await db.treatmentRun.findMany({
    where: {
      voidedAt: null,
      // A run that another site lets mine draw on is read by it, but tended there.
      ...(actor.role === 'member' ? { siteId: { in: [...actor.siteIds] } } : {}),
      OR: [
        { endedAt: null },
        {
          endedAt: { gte: since },
          components: { none: { voidedAt: null, batch: { voidedAt: null } } },
          allocations: { none: { voidedAt: null } },
        },
      ],
    },
    include: {
      site: true,
      method: true,
      readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } },
    },
    orderBy: [{ startedAt: 'desc' }, { id: 'desc' }],
    take: mostRuns,
  });
  return runs.flatMap((run): RunLine[] => {
    const due = dueOfRun({
      window: methodWindow(run.method),
      startedAt: run.startedAt,
      endedAt: run.endedAt,
      now,
      readings: run.readings.map(({ readAt, place, celsius, ph }) => ({
        at: readAt,
        place,
        celsius: celsius?.toNumber() ?? null,
        ph: ph?.toNumber() ?? null,
      })),
      loadCelsiusAtSpawning: run.loadCelsiusAtSpawning?.toNumber() ?? null,
      spawned: false,
    });
    if (due === null) return [];
    const { siteId, site, method } = run;
    return [
      {
        ...({ of: 'run', urgency: due.urgency, siteId, siteName: site.name, due } as const),
        ...{ timeZone: site.timeZone, today: todayInZone(site.timeZone, now) },
        ...{ runId: run.id, code: run.code, method: method.kind },
      },
    ];
  });
}
