import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { dueOfRun } from '@/lib/growing/due/due-of-run';
import { methodWindow } from '../treatment/method-window';
import type { RunLine } from './due-line';

/** A load that is out is asked about for two weeks; the rule says so more exactly. */
const lookBackDays = 15;
const mostRuns = 200;

/**
 * Of the runs at these sites those still going, and loads that nothing was filled from yet. A run that another site lets
 * mine draw on is tended there.
 */
async function openRuns({ db, actor }: ReadContext, since: Date, sites: string[] | null): Promise<string[]> {
  const network = actor.networkId;
  const rows = await db.$queryRaw<{ id: string }[]>`
    select r.id from (
      select * from treatment_run where network_id = ${network}::uuid and ended_at is null and voided_at is null and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[]))
      union all
      select t.* from treatment_run t
      where t.network_id = ${network}::uuid and t.ended_at >= ${since} and t.voided_at is null and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[]))
        and not exists (select from batch_component c join batch b on b.network_id = c.network_id and b.id = c.batch_id
          where c.network_id = ${network}::uuid and c.treatment_run_id = t.id and c.voided_at is null and b.voided_at is null)
        and not exists (select from treatment_allocation a
          where a.network_id = ${network}::uuid and a.treatment_run_id = t.id and a.voided_at is null)
    ) r join site s on s.network_id = r.network_id and s.id = r.site_id and s.left_at is null
    order by r.started_at desc, r.id desc limit ${mostRuns}`;
  return rows.map(({ id }) => id);
}

/** What is due of the treatment runs made at these sites: those running, and loads not spawned yet. */
export async function runLines(context: ReadContext, now: Date, sites: string[] | null): Promise<RunLine[]> {
  const ids = await openRuns(context, new Date(now.getTime() - lookBackDays * 86_400_000), sites);
  if (ids.length === 0) return [];
  const runs = await context.db.treatmentRun.findMany({
    where: { id: { in: ids } },
    include: {
      site: true,
      method: true,
      readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } },
    },
    orderBy: [{ startedAt: 'desc' }, { id: 'desc' }],
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
