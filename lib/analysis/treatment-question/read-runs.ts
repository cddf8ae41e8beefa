import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { noSql, type Sql, sql } from '@/lib/database/sql-text';
import { addDays } from '@/lib/growing/calendar-date';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { windowOfMethod } from '@/lib/growing/window-of-method';
import { type EncodedRun, type JudgedRun, judgedRun } from './judged-run';

/** Runs judged at one go; their readings are let go before the next lot is read. */
const atOnce = 4_000;
/** A batch is inoculated days, of a fermentation weeks, after its run began. */
const daysBefore = 60;

/** The window of each method of the network, by method id. */
export async function readWindows({ db }: ReadContext): Promise<ReadonlyMap<string, TreatmentWindow | null>> {
  const methods = await db.method.findMany();
  const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
  return new Map(
    methods.map(({ id, kind, minCelsius, maxCelsius, minPh, minMinutes, maxMinutes }) => [
      id,
      windowOfMethod({
        kind,
        minCelsius: number(minCelsius),
        maxCelsius: number(maxCelsius),
        minPh: number(minPh),
        minMinutes,
        maxMinutes,
      }),
    ]),
  );
}

/** Every ended run that could have fed a batch inoculated in the period, held against its window, by id; with `siteId` of that site. */
export async function readRuns(
  context: ReadContext,
  period: { readonly from: string; readonly to: string },
  now: Date,
  siteId?: string,
): Promise<readonly JudgedRun[]> {
  const windows = await readWindows(context);
  // Said in the statement only where it is asked, so that one site is always found by its index.
  const where = siteId === undefined ? noSql : sql`and site_id = ${siteId}::uuid`;
  const judged: JudgedRun[] = [];
  let after: string | undefined;
  for (;;) {
    const rows = await readSome(context, period, where, after);
    for (const row of rows) {
      const run = judgedRun(row, windows.get(row[3]) ?? null, now);
      if (run) judged.push(run);
    }
    after = rows.at(-1)?.[0];
    if (after === undefined || rows.length < atOnce) return judged;
  }
}

async function readSome(
  { db, actor }: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
  where: Sql,
  after: string | undefined,
): Promise<EncodedRun[]> {
  const network = actor.networkId;
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(json_build_array(
      r.id, r.code, r.site_id, r.method_id, (r.started_at at time zone s.time_zone)::date,
      (extract(epoch from r.started_at) * 1000)::float8, (extract(epoch from r.ended_at) * 1000)::float8,
      r.load_celsius_at_spawning, (
        select json_agg(json_build_array((extract(epoch from g.read_at) * 1000)::float8, g.place, g.celsius, g.ph)
          order by g.read_at, g.id)
        from treatment_reading g
        where g.network_id = ${network}::uuid and g.treatment_run_id = r.id and g.voided_at is null
      )) order by r.id)::text as rows
    from (
      select * from treatment_run
      where network_id = ${network}::uuid and voided_at is null and ended_at is not null
        and started_at >= ${addDays(from, -daysBefore)}::date and started_at < ${addDays(to, 2)}::date
        and (${after ?? null}::uuid is null or id > ${after ?? null}::uuid) ${where}
      order by id limit ${atOnce}
    ) r join site s on s.network_id = r.network_id and s.id = r.site_id`;
  // The shape is the statement's own.
  return answer?.rows ? (JSON.parse(answer.rows) as EncodedRun[]) : [];
}
