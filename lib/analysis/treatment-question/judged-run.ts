import { judgeRun, type RunReading } from '@/lib/growing/judge-run';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import type { ReadingPlace } from '@/lib/growing/vocabulary';
import { leastMinutes, type RunStanding, windowMargin } from '@/lib/growing/window-margin';

/** An ended run held against its window. */
export type JudgedRun = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly methodId: string;
  /** Calendar date of the site. */
  readonly startedOn: string;
  readonly standing: RunStanding;
  /** Time held over the least time; null where the readings do not tell. */
  readonly heldShare: number | null;
  /** First temperature read: of the water where it was read, otherwise of the load; null without any. */
  readonly startCelsius: number | null;
};

/** Reading as the statement in `read-runs.ts` gives it; `at` in milliseconds. */
type EncodedReading = readonly [at: number, place: ReadingPlace, celsius: number | null, ph: number | null];

export type EncodedRun = readonly [
  id: string,
  code: string,
  siteId: string,
  methodId: string,
  startedOn: string,
  startedAt: number,
  endedAt: number | null,
  loadCelsiusAtSpawning: number | null,
  readings: readonly EncodedReading[] | null,
];

/** A reading later than this part of the least time no longer says how the run began. Our choice. */
const stillTheStart = 0.25;

/** A run as judged, or undefined for one that still runs or has nothing to check. */
export function judgedRun(
  [id, code, siteId, methodId, startedOn, startedAt, endedAt, loadCelsiusAtSpawning, encoded]: EncodedRun,
  window: TreatmentWindow | null,
  now: Date,
): JudgedRun | undefined {
  const readings = (encoded ?? []).map(
    ([at, place, celsius, ph]): RunReading => ({ at: new Date(at), place, celsius, ph }),
  );
  const times = {
    startedAt: new Date(startedAt),
    endedAt: endedAt === null ? null : new Date(endedAt),
    loadCelsiusAtSpawning,
  };
  const margin = windowMargin(judgeRun(times, readings, window, now), window);
  if (margin === undefined || window === null) return undefined;
  const startCelsius = startOf(readings, startedAt + stillTheStart * leastMinutes(window) * 60_000);
  return { id, code, siteId, methodId, startedOn, ...margin, startCelsius };
}

function startOf(readings: readonly RunReading[], until: number): number | null {
  const early = readings.filter(({ at, celsius }) => celsius !== null && at.getTime() <= until);
  const first = early.find(({ place }) => place === 'water') ?? early[0];
  return first?.celsius ?? null;
}
