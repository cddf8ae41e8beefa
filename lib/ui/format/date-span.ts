import { formatDate, formatDayMonth } from './date-text';

/** Both ends as written, and how many days they are, for a sentence that selects by it. */
export type DateSpan = { readonly from: string; readonly to: string; readonly days: 'one' | 'several' };

const yearOf = (date: string) => date.slice(0, 4);

/**
 * The ends of a span of calendar dates, 'YYYY-MM-DD', both included. Years are left out only where both ends lie in the
 * year of `today`: beside another year a day without one would be read as of that year.
 *
 * @throws RangeError when an end is no calendar date
 */
export function dateSpan(from: string, to: string, locale: string, today?: string): DateSpan {
  const near = today !== undefined && [from, to].every((date) => yearOf(date) === yearOf(today));
  const written = near ? formatDayMonth : formatDate;
  return { from: written(from, locale), to: written(to, locale), days: from === to ? 'one' : 'several' };
}
