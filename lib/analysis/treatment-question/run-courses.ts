import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import type { JudgedRun } from './judged-run';
import type { CourseWindow, RunCourse } from './treatments-answer';

/** So many of the latest runs of each site and method are drawn. */
const latest = 8;

/** The runs whose courses are drawn: the latest of each site and method. */
export function drawnRuns(runs: readonly JudgedRun[]): JudgedRun[] {
  const taken = new Map<string, number>();
  return [...runs]
    .sort((a, b) => b.startedOn.localeCompare(a.startedOn) || (a.id < b.id ? -1 : 1))
    .filter(({ siteId, methodId }) => {
      const key = `${siteId} ${methodId}`;
      const before = taken.get(key) ?? 0;
      taken.set(key, before + 1);
      return before < latest;
    })
    .reverse();
}

type Reading = readonly [runId: string, minute: number, value: number];

/** The readings of runs as minutes from the start: pH of a lime soak, else the temperature where the window is held. */
export async function readCourses(
  { db, actor }: ReadContext,
  runs: readonly JudgedRun[],
  windows: ReadonlyMap<string, TreatmentWindow | null>,
): Promise<readonly RunCourse[]> {
  const lime = runs.filter(({ methodId }) => windows.get(methodId)?.kind === 'lime').map(({ id }) => id);
  const heat = runs.filter(({ methodId }) => windows.get(methodId)?.kind === 'heat').map(({ id }) => id);
  const ids = runs.map(({ id }) => id);
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(json_build_array(g.treatment_run_id,
      (extract(epoch from g.read_at - r.started_at) / 60)::float8,
      case when g.treatment_run_id = any (${lime}::uuid[]) then g.ph else g.celsius end)
      order by g.treatment_run_id, g.read_at, g.id)::text as rows
    from treatment_reading g join treatment_run r on r.network_id = g.network_id and r.id = g.treatment_run_id
    where g.network_id = ${actor.networkId}::uuid and g.treatment_run_id = any (${ids}::uuid[]) and g.voided_at is null
      and case when g.treatment_run_id = any (${lime}::uuid[]) then g.ph else g.celsius end is not null
      and (g.place = 'load_middle' or not g.treatment_run_id = any (${heat}::uuid[]))`;
  // The shape is the statement's own.
  const readings = answer?.rows ? (JSON.parse(answer.rows) as Reading[]) : [];
  const byRun = new Map<string, [number, number][]>();
  for (const [runId, minute, value] of readings) {
    const own = byRun.get(runId);
    if (own) own.push([minute, value]);
    else byRun.set(runId, [[minute, value]]);
  }
  return runs.map(({ id, standing }) => ({
    runId: id,
    short: standing === 'outside',
    points: byRun.get(id) ?? [],
  }));
}

/** What the courses of each method are held against. */
export function courseWindows(windows: ReadonlyMap<string, TreatmentWindow | null>): CourseWindow[] {
  return [...windows].flatMap(([methodId, window]) => {
    const own = window === null ? undefined : courseWindow(methodId, window);
    return own ? [own] : [];
  });
}

function courseWindow(methodId: string, window: TreatmentWindow): CourseWindow {
  switch (window.kind) {
    case 'heat': {
      const { kind, lowCelsius: low, highCelsius: high, minMinutes: least } = window;
      return { methodId, kind, low, high, least };
    }
    case 'lime':
      return { methodId, kind: 'lime', low: window.minPh, high: null, least: window.minMinutes };
    case 'ferment':
      return { methodId, kind: 'ferment', low: null, high: null, least: window.minDays * 1440 };
  }
}
