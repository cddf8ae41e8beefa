import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { instantInZone } from '@/lib/growing/instant-in-zone';
import { sitesAsShown } from '@/lib/records/sharing/sites-as-shown';
import { codeForm } from '../plain-words';
import type { MomentCell } from '../read-moment-cell';
import type { RowValues } from '../read-row';

type Lent = {
  readonly id: string;
  readonly methodId: string;
  readonly startedAt: Date;
  readonly timeZone: string;
};

const minuteOf = (instant: Date) => Math.floor(instant.getTime() / 60_000);

/** Runs that the actor may see of sites out of their sight, by code. */
async function readLent(context: WriteContext): Promise<ReadonlyMap<string, Lent>> {
  const { db, actor } = context;
  const rows = await db.$queryRaw<(Omit<Lent, 'timeZone'> & { code: string; siteId: string })[]>`
    select r.id::text, r.code, r.site_id::text as "siteId", r.method_id::text as "methodId", r.started_at as "startedAt"
    from public.treatment_run r where r.network_id = ${actor.networkId}::uuid
      and not exists (select 1 from public.site s where s.network_id = r.network_id and s.id = r.site_id)`;
  const siteOf = await sitesAsShown(
    context,
    rows.map(({ siteId }) => siteId),
  );
  return new Map(
    rows.map(({ id, code, siteId, methodId, startedAt }) => [
      codeForm(code),
      { id, methodId, startedAt, timeZone: siteOf(siteId).timeZone },
    ]),
  );
}

/**
 * Finds the run of another site that a row tells of. A list of treatments has such runs, with the site as far as it
 * shows itself: what the row says of the site cannot be looked up, and the run is known by code, method and start.
 */
export function lentRuns(usedUp: ReadonlySet<string>) {
  const used = new Set(usedUp);
  let runs: ReadonlyMap<string, Lent> | undefined;
  return async (context: WriteContext, values: RowValues): Promise<string | undefined> => {
    const code = values.get('code');
    const start = values.get('startedAt') as MomentCell | undefined;
    if (typeof code !== 'string' || start?.date === undefined || start.time === undefined) return undefined;
    runs ??= await readLent(context);
    const run = runs.get(codeForm(code));
    if (run === undefined || used.has(run.id) || values.get('method') !== run.methodId) return undefined;
    const said = instantInZone(start.date, start.time, run.timeZone);
    if (minuteOf(said) !== minuteOf(run.startedAt)) return undefined;
    used.add(run.id);
    return run.id;
  };
}
