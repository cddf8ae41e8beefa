import { type Answer, answer, cannotCompute } from './answer';
import { addDays, type CalendarDate } from './calendar-date';

/** Units first found contaminated on a date; follow-ups on them are never counted again. */
export type FoundUnits = { readonly on: CalendarDate; readonly units: number };

export type ContaminationRecord = {
  readonly inoculatedUnits: number;
  readonly inoculatedOn: CalendarDate;
  /** Days from inoculation to which the batch is judged; the day itself is still inside. */
  readonly windowDays: number;
  readonly findings: readonly FoundUnits[];
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

/**
 * The contamination outcome of one batch. A unit counts once, by the date it was first found; records dated after
 * `today` or before inoculation are left out by the forms and do not occur. The window is over once its last day
 * has passed or a look or finding was recorded on that day.
 * Units lost for other causes before contamination stay among the inoculated. More found than inoculated units
 * is "cannot compute". A total loss to contamination before the window's end counts as inspected: nothing is
 * left to look at.
 */
export function contaminationOutcome(record: ContaminationRecord): Answer<ContaminationOutcome> {
  const { inoculatedUnits, inoculatedOn, windowDays, findings, looks, today } = record;
  if (!Number.isInteger(inoculatedUnits) || inoculatedUnits < 1) {
    return cannotCompute('no-inoculated-units', { inoculatedUnits });
  }
  const atAnyTime = findings.reduce((sum, finding) => sum + finding.units, 0);
  if (atAnyTime > inoculatedUnits) {
    return cannotCompute('more-than-inoculated', { contaminatedUnits: atAnyTime, inoculatedUnits });
  }
  const windowEnd = addDays(inoculatedOn, windowDays);
  const looked = [...looks, ...findings.map((finding) => finding.on)].some((on) => on >= windowEnd);
  const over = today > windowEnd || (today === windowEnd && looked);
  if (!over) return answer({ kind: 'window-open', windowEnd, soFar: atAnyTime });
  if (!looked && atAnyTime < inoculatedUnits) {
    return answer({ kind: 'not-inspected', windowEnd, soFar: atAnyTime });
  }
  const byEnd = findings
    .filter((finding) => finding.on <= windowEnd)
    .reduce((sum, finding) => sum + finding.units, 0);
  return answer({
    kind: 'inspected',
    windowEnd,
    contaminatedByWindowEnd: byEnd,
    contaminatedAtAnyTime: atAnyTime,
    inoculatedUnits,
  });
}
