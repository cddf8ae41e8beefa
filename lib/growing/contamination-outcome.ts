import { type Answer, answer, cannotCompute } from './answer';
import { addDays, type CalendarDate } from './calendar-date';

/** Units on the date they were first found contaminated, or lost; follow-ups on them are never counted again. */
export type DatedUnits = { readonly on: CalendarDate; readonly units: number };

export type ContaminationRecord = {
  readonly inoculatedUnits: number;
  readonly inoculatedOn: CalendarDate;
  /** Days from inoculation to which the batch is judged; the day itself is still inside. */
  readonly windowDays: number;
  readonly findings: readonly DatedUnits[];
  /** Units lost for another cause that had not been found contaminated before; they stay in the denominator. */
  readonly losses: readonly DatedUnits[];
  /** Dates on which all living units were looked at and none was newly contaminated. */
  readonly looks: readonly CalendarDate[];
  readonly today: CalendarDate;
};

/**
 * `inspected`: someone looked on or after the window's end, so the counts stand.
 * `not-inspected`: the window has passed and nobody looked since; left out of a rate and counted beside it.
 * `window-open`: too early to judge; `soFar` units found until today.
 */
export type ContaminationOutcome =
  | {
      readonly kind: 'inspected';
      readonly windowEnd: CalendarDate;
      readonly contaminatedByWindowEnd: number;
      readonly contaminatedAtAnyTime: number;
      readonly inoculatedUnits: number;
    }
  | { readonly kind: 'not-inspected'; readonly windowEnd: CalendarDate; readonly soFar: number }
  | { readonly kind: 'window-open'; readonly windowEnd: CalendarDate; readonly soFar: number };

function sumUnits(events: readonly DatedUnits[]): number {
  return events.reduce((sum, event) => sum + event.units, 0);
}

/**
 * The contamination outcome of one batch, judged from the window's last day on. A unit counts once, by the date it
 * was first found. Units lost for other causes before contamination stay among the inoculated.
 * A batch nobody looked at on or after the window's end is `not-inspected`, except when no clean unit is left
 * standing: then no later look could change the count, and leaving out total failures would flatter the rate.
 * More units found and lost than inoculated is "cannot compute".
 */
export function contaminationOutcome(record: ContaminationRecord): Answer<ContaminationOutcome> {
  const { inoculatedUnits, inoculatedOn, windowDays, findings, losses, looks, today } = record;
  if (!Number.isInteger(inoculatedUnits) || inoculatedUnits < 1) {
    return cannotCompute('no-inoculated-units', { inoculatedUnits: String(inoculatedUnits) });
  }
  const found = sumUnits(findings);
  const removed = found + sumUnits(losses);
  if (removed > inoculatedUnits) {
    return cannotCompute('more-than-inoculated', { removedUnits: removed, inoculatedUnits });
  }
  const windowEnd = addDays(inoculatedOn, windowDays);
  if (today < windowEnd) return answer({ kind: 'window-open', windowEnd, soFar: found });
  const looked = [...looks, ...findings.map((finding) => finding.on)].some((on) => on >= windowEnd);
  if (!looked && removed < inoculatedUnits) {
    return answer({ kind: 'not-inspected', windowEnd, soFar: found });
  }
  return answer({
    kind: 'inspected',
    windowEnd,
    contaminatedByWindowEnd: sumUnits(findings.filter((finding) => finding.on <= windowEnd)),
    contaminatedAtAnyTime: found,
    inoculatedUnits,
  });
}
