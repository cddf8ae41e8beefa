import type { CalendarDate } from '@/lib/growing/calendar-date';
import type { LeftOutReason } from '../shown-figure';
import type { BatchFacts } from './batch-facts';

export type ContaminationClass =
  | {
      readonly kind: 'counted';
      readonly units: number;
      readonly byWindowEnd: number;
      readonly atAnyTime: number;
      readonly lostClean: number;
    }
  | { readonly kind: 'left-out'; readonly reason: LeftOutReason };

function leftOut(reason: LeftOutReason): ContaminationClass {
  return { kind: 'left-out', reason };
}

/**
 * Whether a batch enters the contamination rate today, and with which units.
 *
 * It enters on the day its window ends (`contaminationAssessedOn`), closed or not, without anybody writing
 * anything. It counts only when somebody looked at it or found something on or after that day; otherwise it is
 * "not inspected". One exception: when every unit had been found contaminated or lost there was nothing left to
 * look at, the outcome is known, and leaving out total failures would flatter the rate.
 * Units lost clean stay in the denominator; a unit counts once whatever became of it.
 */
export function classifyContamination(facts: BatchFacts, today: CalendarDate): ContaminationClass {
  if (facts.voided) return leftOut('voided');
  const windowEnd = facts.contaminationAssessedOn;
  if (windowEnd === null) return leftOut('no-window');
  if (today < windowEnd) return leftOut('window-open');
  const looked = facts.lastInspectedOn !== null && facts.lastInspectedOn >= windowEnd;
  const nothingLeft = facts.contaminatedAtAnyTime + facts.lostClean >= facts.unitCount;
  if (!looked && !nothingLeft) return leftOut('not-inspected');
  return {
    kind: 'counted',
    units: facts.unitCount,
    byWindowEnd: facts.contaminatedByWindowEnd,
    atAnyTime: facts.contaminatedAtAnyTime,
    lostClean: facts.lostClean,
  };
}
