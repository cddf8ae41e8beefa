import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { judgeRun } from '@/lib/growing/judge-run';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { windowOfMethod } from '@/lib/growing/window-of-method';
import type { EncodedRun } from './encoded-run';
import type { RunOfSite } from './run-faults';

/** Far above what a network runs in the days the comparison opens on; beyond it the oldest runs are not looked through. */
const mostRuns = 4000;

/**
 * The treatment runs begun in the period at the actor's sites, held against their windows, the latest first. They arrive
 * as one JSON text: records by the thousand with their readings took longer to unpack than to find.
 */
export async function readRuns(
  { db, actor }: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
  now: Date,
): Promise<RunOfSite[]> {
  const network = actor.networkId;
  // A run that another site lets mine draw on is read by it, but tended there.
  const own = actor.role === 'member' ? [...actor.siteIds] : null;
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    with run as materialized (
      select * from treatment_run
      where network_id = ${network}::uuid and voided_at is null
        and (${own}::uuid[] is null or site_id = any (${own}::uuid[]))
        and started_at between ${dayBeside(from, -1)} and ${dayBeside(to, 2)}
      order by started_at desc, id desc limit ${mostRuns})
    select json_agg(json_build_array(r.id, r.code, r.site_id, s.time_zone, r.method_id,
      (extract(epoch from r.started_at) * 1000)::bigint, (extract(epoch from r.ended_at) * 1000)::bigint,
      r.load_celsius_at_spawning, g.readings, f.first_on) order by r.started_at desc, r.id desc)::text as rows
    from run r
    join site s on s.network_id = ${network}::uuid and s.id = r.site_id
    left join lateral (
      select json_agg(json_build_array((extract(epoch from read_at) * 1000)::bigint, place, celsius, ph) order by read_at)
        as readings
      from treatment_reading
      where network_id = ${network}::uuid and treatment_run_id = r.id and voided_at is null) g on true
    left join lateral (
      select min(b.inoculated_on) as first_on from batch_component c
      join batch b on b.network_id = ${network}::uuid and b.id = c.batch_id and b.voided_at is null
      where c.network_id = ${network}::uuid and c.treatment_run_id = r.id and c.voided_at is null) f on true`;
  // The shape is the statement's own.
  const runs = answer?.rows ? (JSON.parse(answer.rows) as EncodedRun[]) : [];
  const windows = await readWindows(db);
  const todays = new Map<string, string>();
  const todayIn = (zone: string) => {
    const today = todays.get(zone) ?? todayInZone(zone, now);
    todays.set(zone, today);
    return today;
  };
  return runs.map(([id, code, siteId, zone, methodId, started, ended, load, readings, firstFilledOn]) => {
    const window = windows.get(methodId) ?? null;
    const [startedAt, endedAt] = [new Date(started), ended === null ? null : new Date(ended)];
    const judgement = judgeRun(
      { startedAt, endedAt, loadCelsiusAtSpawning: load },
      (readings ?? []).map(([at, place, celsius, ph]) => ({ at: new Date(at), place, celsius, ph })),
      window,
      now,
    );
    return {
      ...{ id, code, siteId, window, judgement },
      startedOn: todayInZone(zone, startedAt),
      endedOn: endedAt === null ? null : todayInZone(zone, endedAt),
      today: todayIn(zone),
      firstFilledOn,
    };
  });
}

/** A day more on either side: the period counts the site's days, the column instants. */
function dayBeside(date: string, days: number): Date {
  return new Date(Date.parse(date) + days * 86_400_000);
}

async function readWindows(db: ReadContext['db']): Promise<ReadonlyMap<string, TreatmentWindow | null>> {
  const methods = await db.method.findMany();
  const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
  return new Map(
    methods.map(({ id, kind, minMinutes, maxMinutes, ...method }) => {
      const [minCelsius, maxCelsius] = [number(method.minCelsius), number(method.maxCelsius)];
      const limits = { kind, minMinutes, maxMinutes, minCelsius, maxCelsius, minPh: number(method.minPh) };
      return [id, windowOfMethod(limits)];
    }),
  );
}
