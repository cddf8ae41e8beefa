import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { judgeRun } from '@/lib/growing/judge-run';
import { windowOfMethod } from '@/lib/growing/window-of-method';
import type { RunOfSite } from './run-faults';

/** Far above what a network runs in the days the comparison opens on; beyond it the oldest runs are not looked through. */
const mostRuns = 4000;

/** The treatment runs begun in the period at the actor's sites, held against their windows, the latest first. */
export async function readRuns(
  { db, actor }: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
  now: Date,
): Promise<RunOfSite[]> {
  const runs = await db.treatmentRun.findMany({
    where: {
      voidedAt: null,
      // A run that another site lets mine draw on is read by it, but tended there.
      ...(actor.role === 'member' ? { siteId: { in: [...actor.siteIds] } } : {}),
      // A day more on either side: the period counts the site's days, the column instants.
      startedAt: { gte: new Date(Date.parse(from) - day), lte: new Date(Date.parse(to) + 2 * day) },
    },
    include: {
      site: { select: { timeZone: true } },
      method: true,
      readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } },
      components: {
        where: { voidedAt: null, batch: { voidedAt: null } },
        select: { batch: { select: { inoculatedOn: true } } },
        orderBy: { batch: { inoculatedOn: 'asc' } },
        take: 1,
      },
    },
    orderBy: [{ startedAt: 'desc' }, { id: 'desc' }],
    take: mostRuns,
  });
  return runs.map(({ id, code, siteId, site, method, startedAt, endedAt, readings, ...run }): RunOfSite => {
    const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
    const { kind, minMinutes, maxMinutes } = method;
    const [minCelsius, maxCelsius] = [number(method.minCelsius), number(method.maxCelsius)];
    const limits = { kind, minMinutes, maxMinutes, minCelsius, maxCelsius, minPh: number(method.minPh) };
    const window = windowOfMethod(limits);
    const loadCelsiusAtSpawning = number(run.loadCelsiusAtSpawning);
    const judgement = judgeRun(
      { startedAt, endedAt, loadCelsiusAtSpawning },
      readings.map(({ readAt, place, celsius, ph }) => ({
        at: readAt,
        place,
        celsius: number(celsius),
        ph: number(ph),
      })),
      window,
      now,
    );
    return {
      ...{ id, code, siteId, window, judgement },
      startedOn: todayInZone(site.timeZone, startedAt),
      endedOn: endedAt === null ? null : todayInZone(site.timeZone, endedAt),
      today: todayInZone(site.timeZone, now),
      firstFilledOn: run.components[0]?.batch.inoculatedOn.toISOString().slice(0, 10) ?? null,
    };
  });
}

const day = 86_400_000;
