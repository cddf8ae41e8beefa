import { type CalendarDate, todayInZone } from '@/lib/growing/calendar-date';

/** The last day on which something holds that ends at this instant: midnight ends the day before. */
export function lastWholeDay(end: Date, timeZone: string): CalendarDate {
  return todayInZone(timeZone, new Date(end.getTime() - 1));
}
