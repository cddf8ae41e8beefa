import { addDays, type CalendarDate } from './calendar-date';

/** The first and the last day of the calendar quarter (January to March, ...) that a day lies in. */
export function calendarQuarter(date: CalendarDate): readonly [first: CalendarDate, last: CalendarDate] {
  const [year, month] = [Number(date.slice(0, 4)), Number(date.slice(5, 7))];
  const first = month - ((month - 1) % 3);
  const start = (of: number, at: number) =>
    `${String(of).padStart(4, '0')}-${String(at).padStart(2, '0')}-01`;
  const next = first === 10 ? start(year + 1, 1) : start(year, first + 3);
  return [start(year, first), addDays(next, -1)];
}
