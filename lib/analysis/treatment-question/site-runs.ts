import { ewmaMean, movingRangeDeviation } from '@/lib/stats/watching/ewma-mean';
import type { JudgedRun } from './judged-run';
import type { DriftPoint, RunCourse, SiteRuns } from './treatments-answer';

/** With fewer runs there is no course to speak of. */
const fewestRuns = 8;
/** So many of the latest runs are charted. */
const mostRuns = 60;
/**
 * Weight of the latest run in the moving average, and standard errors to the limits. Our choice, by simulation with normal values
 * and 20 to 60 runs: of 100 steady sites at most 1 stands beyond a limit at its latest run; six runs in a row two standard
 * deviations shorter are seen in 75 of 100 with 30 runs.
 */
const driftDesign = { weight: 0.2, width: 2.5 } as const;

type Dated = Pick<JudgedRun, 'startedOn' | 'id'>;

/** The runs of each site by method, in the order of their ids, with the course of the time that they held. */
export function siteRuns(runs: readonly JudgedRun[], courses: ReadonlyMap<string, RunCourse>): SiteRuns[] {
  const groups = new Map<string, JudgedRun[]>();
  for (const run of runs) {
    const key = `${run.siteId} ${run.methodId}`;
    const group = groups.get(key);
    if (group) group.push(run);
    else groups.set(key, [run]);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, own]) => {
      const [first] = own;
      if (first === undefined) return [];
      const count = (standing: JudgedRun['standing']) =>
        own.filter((run) => run.standing === standing).length;
      const { siteId, methodId } = first;
      return [
        {
          siteId,
          methodId,
          runs: own.length,
          outside: count('outside'),
          long: count('long'),
          unknown: count('unknown'),
          drift: driftOf(own),
          courses: own.sort(byDay).flatMap(({ id }) => courses.get(id) ?? []),
        },
      ];
    });
}

/**
 * The moving average of the time held over the least time, run by run, against the site's own mean. What is short all along
 * is no drift: the count of runs outside the window shows that.
 */
export function driftOf(runs: readonly JudgedRun[]): DriftPoint[] | null {
  const told = runs
    .flatMap(({ heldShare, ...run }) => (heldShare === null ? [] : [{ ...run, heldShare }]))
    .sort(byDay)
    .slice(-mostRuns);
  if (told.length < fewestRuns) return null;
  const shares = told.map(({ heldShare }) => heldShare);
  const sigma = movingRangeDeviation(shares);
  if (typeof sigma !== 'number') return null;
  const centre = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const { points } = ewmaMean(shares, { ...driftDesign, centre, sigma });
  return told.flatMap((run, index) => {
    const point = points[index];
    if (point === undefined) return [];
    const { value: average, low, high } = point;
    return [
      {
        runId: run.id,
        code: run.code,
        on: run.startedOn,
        heldShare: run.heldShare,
        standing: run.standing,
        average,
        low,
        high,
        signal: average < low ? ('shorter' as const) : average > high ? ('longer' as const) : null,
      },
    ];
  });
}

function byDay(a: Dated, b: Dated): number {
  return a.startedOn.localeCompare(b.startedOn) || (a.id < b.id ? -1 : 1);
}
