import { type CalendarDate, daysBetween } from '@/lib/growing/calendar-date';
import type { RunJudgement } from '@/lib/growing/judge-run';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import type { RecordFault } from './record-fault';

/** A treatment run as the list of faults sees it. Days by its site's calendar. */
export type RunOfSite = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly startedOn: CalendarDate;
  readonly endedOn: CalendarDate | null;
  readonly today: CalendarDate;
  readonly window: TreatmentWindow | null;
  readonly judgement: RunJudgement;
  /** The earliest day on which a batch was filled from it; null while there is none. */
  readonly firstFilledOn: CalendarDate | null;
};

/** Days after which a bath or a soak that nobody ended was forgotten. Common practice. */
const longestDays = 2;

/** Why a run cannot be held against its window although it has one. */
const readingsMissing = new Set([
  'no-readings',
  'no-load-readings',
  'not-enough-readings',
  'gap-in-readings',
]);

/** What is missing of a treatment run, or hard to believe. */
export function runFaults(run: RunOfSite): RecordFault[] {
  const { id, code, siteId, startedOn, endedOn, window, judgement, firstFilledOn } = run;
  const fault = (kind: RecordFault['kind'], on: CalendarDate): RecordFault => ({
    ...{ kind, siteId, of: 'run', id, code, on },
  });
  const faults: RecordFault[] = [];
  const longest = window?.kind === 'ferment' ? window.maxDays + longestDays : longestDays;
  const forgotten = firstFilledOn !== null || daysBetween(startedOn, run.today) > longest;
  if (endedOn === null && forgotten) faults.push(fault('run-no-end', startedOn));
  if (
    endedOn !== null &&
    judgement.kind !== 'none' &&
    judgement.check.kind === 'cannot-compute' &&
    readingsMissing.has(judgement.check.reason)
  )
    faults.push(fault('run-no-readings', startedOn));
  if (firstFilledOn !== null && (endedOn ?? startedOn) > firstFilledOn)
    faults.push(fault('run-after-filling', firstFilledOn));
  return faults;
}
