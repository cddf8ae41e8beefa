import { isCalendarDate } from '@/lib/growing/calendar-date';
import type { DateOrder } from '@/lib/growing/condition-table-layout';
import { instantInZone } from '@/lib/growing/instant-in-zone';

const dated = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?:[T\s,]+(.+))?$/;
const clock =
  /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([AaPp])?\.?\s?[Mm]?\.?\s*(Z|UTC|[+-]\d{2}:?\d{2})?$/;

/** The three parts of a date as written, and what follows it. */
export type DateParts = { readonly parts: readonly [number, number, number]; readonly rest: string };

/** Cuts a written date such as 2026-03-04, 4/3/2026 or 04.03.26 into its parts; undefined where there is none. */
export function dateParts(text: string): DateParts | undefined {
  const [, a, b, c, rest = ''] = dated.exec(text.trim()) ?? [];
  if (a === undefined || b === undefined || c === undefined) return undefined;
  return { parts: [Number(a), Number(b), Number(c)], rest: rest.trim() };
}

/** The calendar date of three parts; undefined where it is none, such as the 31st of April. */
export function dateInOrder([a, b, c]: DateParts['parts'], order: DateOrder): string | undefined {
  const [y, m, d] = order === 'ymd' ? [a, b, c] : order === 'dmy' ? [c, b, a] : [c, a, b];
  const year = y < 100 ? 2000 + y : y;
  const two = (part: number) => String(part).padStart(2, '0');
  const date = `${String(year).padStart(4, '0')}-${two(m)}-${two(d)}`;
  return isCalendarDate(date) ? date : undefined;
}

/** The order that a date must have by its own parts; undefined where several read. */
export function onlyOrder({ parts: [a, b, c] }: DateParts): DateOrder | undefined {
  if (a > 31) return 'ymd';
  // 26.05.13 may begin with its day or with the year of two digits.
  if (a > 12 && b <= 12 && c > 12 && c <= 31) return undefined;
  if (a > 12) return 'dmy';
  return b > 12 ? 'mdy' : undefined;
}

/**
 * An instant from a date and a time of day, by the clock on the wall of the site unless an offset or Z is written.
 * Seconds are dropped: nothing here is judged by them. Undefined where either cannot be read.
 */
export function readMoment(text: string, order: DateOrder, timeZone: string): Date | undefined {
  const found = dateParts(text);
  const date = found && dateInOrder(found.parts, order);
  const [, h, minute, , half, offset] = clock.exec(found?.rest ?? '') ?? [];
  if (date === undefined || h === undefined || minute === undefined) return undefined;
  const hour = half === undefined ? Number(h) : (Number(h) % 12) + (/p/i.test(half) ? 12 : 0);
  if (hour > 23 || Number(minute) > 59) return undefined;
  const time = `${String(hour).padStart(2, '0')}:${minute}`;
  if (offset === undefined) return instantInZone(date, time, timeZone);
  const written = /^[+-]\d{4}$/.test(offset) ? `${offset.slice(0, 3)}:${offset.slice(3)}` : offset;
  const instant = new Date(`${date}T${time}:00${/^[+-]/.test(written) ? written : 'Z'}`);
  return Number.isNaN(instant.getTime()) ? undefined : instant;
}
