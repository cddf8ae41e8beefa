import { addDays, type CalendarDate } from '@/lib/growing/calendar-date';
import { calendarQuarter } from '@/lib/growing/calendar-quarter';

/** A period as whole years and quarters, by their first days, and what is left over as spans of days. */
export type SplitPeriod = {
  readonly years: readonly CalendarDate[];
  readonly quarters: readonly CalendarDate[];
  /** Both days included; at most one span before the whole quarters and one after. */
  readonly days: readonly (readonly [from: CalendarDate, to: CalendarDate])[];
};

/**
 * Splits the days from one to another, both included. A period that reaches beyond the first or last day on which
 * there is anything (`held`) is as good as one to the end of that year, so that "until now" is whole.
 */
export function splitPeriod(
  asked: { readonly from: CalendarDate; readonly to: CalendarDate },
  held: { readonly from: CalendarDate; readonly to: CalendarDate },
): SplitPeriod {
  const from = asked.from <= held.from ? `${held.from.slice(0, 4)}-01-01` : asked.from;
  const to = asked.to >= held.to ? `${held.to.slice(0, 4)}-12-31` : asked.to;
  const years: CalendarDate[] = [];
  const quarters: CalendarDate[] = [];
  const days: [CalendarDate, CalendarDate][] = [];
  for (let at = from; at <= to; ) {
    const yearEnd = `${at.slice(0, 4)}-12-31`;
    const [quarterStart, quarterEnd] = calendarQuarter(at);
    if (at.endsWith('-01-01') && yearEnd <= to) {
      years.push(at);
      at = addDays(yearEnd, 1);
    } else if (at === quarterStart && quarterEnd <= to) {
      quarters.push(at);
      at = addDays(quarterEnd, 1);
    } else {
      const end = quarterEnd < to ? quarterEnd : to;
      days.push([at, end]);
      at = addDays(end, 1);
    }
  }
  return { years, quarters, days };
}
