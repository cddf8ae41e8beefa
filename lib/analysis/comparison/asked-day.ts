import { type Address, givenOnce } from '@/lib/base/given-once';
import { type CalendarDate, isCalendarDate } from '@/lib/growing/calendar-date';
import { isoDateOf } from '@/lib/growing/typed-date';

/** `typed`: the address says something of it; `date` is undefined where it says nothing or nothing that can be read. */
export type AskedDay = { readonly typed: boolean; readonly date: CalendarDate | undefined };

/** Of the years in which a batch can be dated; the database knows no year 0, and no question reaches before year 1. */
const datable = (text: string | undefined) =>
  text !== undefined && isCalendarDate(text) && text >= '1950-01-01' && text <= '2100-12-31';

/** A day in the address: one ISO date in a link, or the day, month and year that the form's date field posts. */
export function askedDay(query: Address, name: 'from' | 'to'): AskedDay {
  const given = givenOnce(query);
  const boxes = (['day', 'month', 'year'] as const).map((part) => given[`${name}__${part}`]?.trim());
  const [day = '', month = '', year = ''] = boxes;
  const boxed = boxes.some((part) => part !== undefined);
  const text = boxed ? isoDateOf(day, month, year) : given[name];
  return { typed: boxed || text !== undefined, date: datable(text) ? text : undefined };
}
