import type { ModelBatch } from '../adjusted/model-batch';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { Fit } from '../fitting/fit';
import { treatedBatches } from './batch-standing';
import type { JudgedRun } from './judged-run';
import { runsBehind } from './runs-behind';
import { siteRuns } from './site-runs';
import { standingDifference } from './standing-difference';
import { type LossGround, lossesBySeason, lossesByStanding, lossesByStart } from './treated-losses';
import type { CourseWindow, RunCourse, TreatmentsAnswer } from './treatments-answer';

export type TreatmentsData = {
  readonly judged: readonly JudgedBatch[];
  readonly batches: readonly ModelBatch[];
  /** Ended runs that could have treated the batches, and the first day of the period asked about. */
  readonly runs: readonly JudgedRun[];
  readonly from: string;
  readonly courses: readonly RunCourse[];
  readonly windows: readonly CourseWindow[];
  readonly ground: LossGround;
};

/** Whether treatments did what they say, and what it cost where they did not. Order of entry does not change the answer. */
export async function answerTreatments(data: TreatmentsData, fitModel: Fit): Promise<TreatmentsAnswer> {
  const treated = treatedBatches(data.judged, data.runs);
  const runs = runsBehind(data.judged, data.runs);
  const standings = lossesByStanding(treated, runs, data.ground);
  const count = (standing: JudgedRun['standing']) => runs.filter((run) => run.standing === standing).length;
  const sitesOf = (standing: JudgedRun['standing']) =>
    standings.find((one) => one.standing === standing)?.siteIds ?? [];
  const behind = new Set(runs.map(({ id }) => id));
  const courses = new Map(data.courses.map((course) => [course.runId, course]));
  const live = data.judged.filter(({ facts }) => !facts.voided).length;
  return {
    judgedRuns: runs.length - count('unknown'),
    outsideRuns: count('outside'),
    longRuns: count('long'),
    unknownRuns: count('unknown'),
    otherRuns: data.runs.filter(({ id, startedOn }) => startedOn >= data.from && !behind.has(id)).length,
    standings,
    difference: await standingDifference(treated, data.batches, standings, fitModel),
    sitesWithBoth: sitesOf('outside').filter((site) => sitesOf('well').includes(site)).length,
    seasons: lossesBySeason(treated, data.batches, data.ground),
    starts: lossesByStart(treated, data.ground),
    sites: siteRuns(runs, courses),
    windows: data.windows,
    batchesWithoutRun: live - treated.length,
    asOf: data.ground.asOf,
  };
}
