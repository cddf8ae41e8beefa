import type { CalendarDate } from '@/lib/growing/calendar-date';

/** What stepped out of line. Percentages 0-100. */
type Found =
  /** A spawn lot that loses more than its sites and methods would anyway. */
  | {
      readonly kind: 'lot';
      readonly lotId: string;
      readonly observed: number;
      readonly expected: number;
      readonly units: number;
    }
  /** A site whose moving average left its limits. */
  | {
      readonly kind: 'course';
      readonly siteId: string;
      readonly side: 'above' | 'below';
      readonly average: number;
      readonly usual: number;
    }
  /** A treatment run outside its window; `verdict` as the check of its method says it. */
  | {
      readonly kind: 'run';
      readonly siteId: string;
      readonly runId: string;
      readonly code: string;
      readonly verdict: RunVerdict;
    }
  /** A batch that lost far more than a batch there would. */
  | {
      readonly kind: 'loss';
      readonly siteId: string;
      readonly batchId: string;
      readonly found: number;
      readonly units: number;
      /** As many are found in 1 of 1000 such batches at most. */
      readonly mostLikely: number;
    }
  /** A batch whose biological efficiency, percent, lies outside the range for a batch there. */
  | {
      readonly kind: 'yield';
      readonly siteId: string;
      readonly batchId: string;
      readonly side: 'above' | 'below';
      readonly bePercent: number;
      readonly low: number;
      readonly high: number;
    }
  /** Records of a site that went missing lately. */
  | {
      readonly kind: 'records';
      readonly siteId: string;
      readonly missing: number;
      readonly implausible: number;
      /** The day of the oldest of them; `since` is that of the latest, by which the list is ordered. */
      readonly oldest: CalendarDate;
      /** Of their batches and runs, each once, the oldest record first. */
      readonly codes: readonly string[];
    };

export type RunVerdict = 'cut_short' | 'never_reached' | 'too_hot' | 'too_long' | 'ph_low';

/**
 * One line of the watch list. `key` is made from what the line is about and from when, so that the same signal has the same
 * key whenever it is worked out, and something new of the same lot or site has another one.
 */
export type Signal = Found & { readonly key: string; readonly since: CalendarDate };

/** Those since a day, the newest first. */
export function latestSignals(signals: readonly Signal[], since: CalendarDate): Signal[] {
  return signals
    .filter((signal) => signal.since >= since)
    .sort((a, b) => b.since.localeCompare(a.since) || a.key.localeCompare(b.key));
}
