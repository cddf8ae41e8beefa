import type { Quarter } from '@/lib/growing/quarter';
import type { RunStanding } from '@/lib/growing/window-margin';
import type { ShownFigure } from '../shown-figure';

/** What batches lost whose runs stood alike to their windows. */
export type StandingLoss = {
  readonly standing: RunStanding;
  /** Runs that treated the batches asked about and stood so. */
  readonly runs: number;
  /** Sites of those runs. */
  readonly siteIds: readonly string[];
  readonly loss: ShownFigure;
};

/** What batches lost, by season of inoculation at their site ('1' winter); runs longer than their window allows are in neither. */
export type SeasonLoss = {
  readonly season: Quarter;
  /** Quarters of the year in which sites had it: '1' December to February in the north, '3' June to August in the south. */
  readonly quarters: readonly Quarter[];
  readonly inside: ShownFigure;
  readonly outside: ShownFigure;
};

/** Start temperatures from `fromCelsius` (null: no lower limit) to below `belowCelsius`; both null: not read. */
export type StartLoss = {
  readonly methodId: string;
  readonly fromCelsius: number | null;
  readonly belowCelsius: number | null;
  readonly runs: number;
  readonly loss: ShownFigure;
};

/** A run on the control chart of its site and method. */
export type DriftPoint = {
  readonly runId: string;
  readonly code: string;
  readonly on: string;
  /** Time held over the least time. */
  readonly heldShare: number;
  readonly standing: RunStanding;
  /** Moving average and its limits. */
  readonly average: number;
  readonly low: number;
  readonly high: number;
  readonly signal: 'shorter' | 'longer' | null;
};

/** The readings of one run: minutes from its start, degrees Celsius or pH. */
export type RunCourse = {
  readonly runId: string;
  readonly short: boolean;
  readonly points: readonly (readonly [minute: number, value: number])[];
};

export type SiteRuns = {
  readonly siteId: string;
  readonly methodId: string;
  readonly runs: number;
  readonly outside: number;
  /** Held its window and lasted longer than that allows. */
  readonly long: number;
  readonly unknown: number;
  /** Null with too few runs for a course, or where all held alike. */
  readonly drift: readonly DriftPoint[] | null;
  /** Of the latest runs, oldest first. */
  readonly courses: readonly RunCourse[];
};

/** The window that courses are held against; `least` in minutes. */
export type CourseWindow = {
  readonly methodId: string;
  readonly kind: 'heat' | 'lime' | 'ferment';
  readonly low: number | null;
  readonly high: number | null;
  readonly least: number;
};

export type TreatmentsAnswer = {
  /** Ended runs that treated the batches asked about and whose readings tell. */
  readonly judgedRuns: number;
  /** Of those: did not hold their window, and held it but lasted longer than it allows. */
  readonly outsideRuns: number;
  readonly longRuns: number;
  /** Ended runs that treated the batches asked about and whose readings do not tell. */
  readonly unknownRuns: number;
  /** Ended runs begun in the period that treated none of the batches asked about. */
  readonly otherRuns: number;
  readonly standings: readonly StandingLoss[];
  /** Outside minus well inside, sites, methods and species levelled out, points; null where there are not both. */
  readonly difference: ShownFigure | null;
  /** Whether a site has batches of both, so that the difference is not the sites' alone. */
  readonly sitesWithBoth: number;
  readonly seasons: readonly SeasonLoss[];
  readonly starts: readonly StartLoss[];
  readonly sites: readonly SiteRuns[];
  readonly windows: readonly CourseWindow[];
  /** Batches without a run that has a window: untreated, or the run not recorded. */
  readonly batchesWithoutRun: number;
  readonly asOf: string;
};
