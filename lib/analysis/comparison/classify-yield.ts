import { addDays, type CalendarDate, daysBetween } from '@/lib/growing/calendar-date';
import type { LeftOutReason } from '../shown-figure';
import type { BatchFacts } from './batch-facts';

export type YieldClass =
  | {
      readonly kind: 'counted';
      /** Grams that count, up to the yield day. */
      readonly freshGrams: number;
      /** What they are divided by: dry grams, bed area in cm2, or log-days. */
      readonly over: number;
      readonly laterGrams: number;
      readonly cropped: boolean;
    }
  | { readonly kind: 'left-out'; readonly reason: LeftOutReason };

const daysOfOneYear = 365;

function leftOut(reason: LeftOutReason): YieldClass {
  return { kind: 'left-out', reason };
}

/** Nothing was picked, and that is known: said at closing, or no unit was left that could have cropped. */
function knownToHaveGivenNothing(facts: BatchFacts): boolean {
  const gone = facts.contaminatedAtAnyTime + facts.lostClean >= facts.unitCount;
  return facts.noHarvest === 'none_picked' || facts.closedAsLost || gone;
}

function whyNoFreshMass(facts: BatchFacts): LeftOutReason | undefined {
  if (facts.weighings > 0) return undefined;
  if (facts.noHarvest === 'not_weighed') return 'not-weighed';
  return knownToHaveGivenNothing(facts) ? undefined : 'harvest-unknown';
}

/**
 * Whether a batch enters the pooled yield today, and with what.
 *
 * Only batches that have reached their yield day count, closed or not, and only harvests up to that day; later
 * ones are shown apart. The dry mass of lost units stays in and a total loss is 0. A batch closed as "not weighed"
 * is left out, and so is one of which nothing is weighed and nothing said: unknown is not nothing.
 * Bags, buckets, trays and blocks give BE (over dry grams), beds kg per m2 (over area).
 */
export function classifyYield(facts: BatchFacts, today: CalendarDate): YieldClass {
  if (facts.voided) return leftOut('voided');
  if (facts.containerKind === 'log') return classifyLogYears(facts, today);
  if (facts.yieldAssessedOn === null) return leftOut('no-window');
  if (today < facts.yieldAssessedOn) return leftOut('window-open');
  const missing = whyNoFreshMass(facts);
  if (missing) return leftOut(missing);
  const over = facts.containerKind === 'bed' ? facts.bedAreaCm2 : facts.dryGrams;
  if (over === null || over <= 0) return leftOut(facts.containerKind === 'bed' ? 'no-area' : 'no-dry-mass');
  return {
    kind: 'counted',
    freshGrams: facts.freshGramsByYieldDay,
    over,
    laterGrams: facts.freshGramsLater,
    cropped: facts.freshGramsByYieldDay > 0,
  };
}

/**
 * Logs: everything picked so far over the log-days from inoculation to closing or today. They enter after one
 * year, closed or not; logs that died earlier count with a full year, since they gave that year nothing more.
 * Nothing weighed from open logs is nothing picked yet, which is usual in their first seasons.
 */
function classifyLogYears(facts: BatchFacts, today: CalendarDate): YieldClass {
  if (today < addDays(facts.inoculatedOn, daysOfOneYear)) return leftOut('window-open');
  if (facts.weighings === 0 && facts.noHarvest === 'not_weighed') return leftOut('not-weighed');
  const end = facts.closedOn !== null && facts.closedOn < today ? facts.closedOn : today;
  const days = Math.max(daysOfOneYear, daysBetween(facts.inoculatedOn, end));
  const freshGrams = facts.freshGramsByYieldDay + facts.freshGramsLater;
  return {
    kind: 'counted',
    freshGrams,
    over: days * facts.unitCount,
    laterGrams: 0,
    cropped: freshGrams > 0,
  };
}

/** Biological efficiency of logs: over a finished log's whole life, from inoculation to closing. */
export function classifyFinishedLogs(facts: BatchFacts): YieldClass {
  if (facts.voided) return leftOut('voided');
  if (facts.closedOn === null) return leftOut('log-not-finished');
  const missing = whyNoFreshMass(facts);
  if (missing) return leftOut(missing);
  if (facts.dryGrams === null || facts.dryGrams <= 0) return leftOut('no-dry-mass');
  const freshGrams = facts.freshGramsByYieldDay + facts.freshGramsLater;
  return { kind: 'counted', freshGrams, over: facts.dryGrams, laterGrams: 0, cropped: freshGrams > 0 };
}
