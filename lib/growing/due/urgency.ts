import { addDays, type CalendarDate, daysBetween } from '../calendar-date';
import type { BatchDue } from './batch-facts';

/**
 * `now`: a clock runs. `overdue`: its last day has passed. `today`: its days have come. `soon`: within a week. `season`:
 * its time is months long, as of beds and logs, and has come. `idle`: nothing happens any more, to be tidied up.
 */
export const urgencies = ['now', 'overdue', 'today', 'soon', 'season', 'idle'] as const;
export type Urgency = (typeof urgencies)[number];

const soonDays = 7;
/** Common practice. */
const flushGraceDays = 14;
/** A span longer than this is a season: it would stand on the list every day for months. Our choice. */
const seasonDays = 45;

/** Steps that were seen to today are asked again tomorrow, except those that an entry settles by itself. */
const dailySteps: ReadonlySet<BatchDue['kind']> = new Set([
  'colonised',
  'pins',
  'first-harvest',
  'next-flush',
]);

/** How urgent a line is on a day; null when it is not yet to be shown. */
export function urgencyOn(due: BatchDue, today: CalendarDate, enteredOn: CalendarDate): Urgency | null {
  if (enteredOn === today && dailySteps.has(due.kind)) return null;
  if (due.kind === 'none-left' || due.kind === 'quiet') return due.from <= today ? 'idle' : null;
  if (due.to < today) {
    // A flush that did not come may well be the last one: it is let go, and after the quiet days the batch is asked about.
    const given = due.kind === 'next-flush' && addDays(due.to, flushGraceDays) < today;
    return given ? null : 'overdue';
  }
  if (due.from <= today) return daysBetween(due.from, due.to) > seasonDays ? 'season' : 'today';
  return due.from <= addDays(today, soonDays) ? 'soon' : null;
}
