import { type CalendarDate, daysBetween } from '@/lib/growing/calendar-date';
import type { SiteDates } from '../comparison/batch-facts';

/**
 * Today's dates at sites as statements take them: the earliest, and the sites where it is already one day later, or two,
 * as at both sides of the date line. A date worked out so needs no join, which the database would plan for few rows and
 * run for many.
 */
export type DaysAtSites = {
  readonly first: CalendarDate | null;
  readonly later: readonly string[];
  readonly twoLater: readonly string[];
};

export function daysAtSites(today: SiteDates): DaysAtSites {
  // There are far fewer dates than sites.
  const [first, ...others] = [...new Set(today.values())].sort();
  if (first === undefined) return { first: null, later: [], twoLater: [] };
  const ahead = (days: number) => {
    const dates = new Set(others.filter((date) => daysBetween(first, date) >= days));
    return dates.size === 0 ? [] : [...today].flatMap(([site, date]) => (dates.has(date) ? [site] : []));
  };
  return { first, later: ahead(1), twoLater: ahead(2) };
}

const epoch = '1970-01-01';

/** Days since 1970, as statements give them. */
export function epochDay(date: CalendarDate): number {
  return daysBetween(epoch, date);
}

/** Today's days since 1970 by site, each date worked out once. */
export function epochDaysAt(today: SiteDates): (site: string) => number | undefined {
  const days = new Map([...new Set(today.values())].map((date) => [date, epochDay(date)]));
  return (site) => days.get(today.get(site) ?? '');
}
