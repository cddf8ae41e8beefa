/** A calendar date written 'YYYY-MM-DD', in the site's own time zone; it is a day, not an instant. */
export type CalendarDate = string;

const millisecondsPerDay = 86_400_000;
const written = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since 1970-01-01 of a real date, or null: 2026-02-30 and 2026-2-3 are not dates. */
function dayNumber(date: CalendarDate): number | null {
  const parts = written.exec(date);
  if (!parts) return null;
  const milliseconds = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(milliseconds)) return null;
  // The engine rolls 30 February over into March; the written form must survive the round trip.
  return new Date(milliseconds).toISOString().startsWith(date) ? milliseconds / millisecondsPerDay : null;
}

/** True for a real date written 'YYYY-MM-DD' (proleptic Gregorian, years 0000-9999). */
export function isCalendarDate(text: string): boolean {
  return dayNumber(text) !== null;
}

function requireDayNumber(date: CalendarDate): number {
  const day = dayNumber(date);
  if (day === null) throw new RangeError(`not a calendar date: ${date.slice(0, 40)}`);
  return day;
}

/**
 * The date `days` whole days later (earlier when negative).
 * Throws RangeError when `date` is no date, `days` no whole number, or the result leaves the years 0000-9999.
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  const day = requireDayNumber(date) + days;
  if (!Number.isSafeInteger(days)) throw new RangeError(`not a whole number of days: ${days}`);
  const moved = new Date(day * millisecondsPerDay).toISOString().slice(0, 10);
  if (!written.test(moved)) throw new RangeError(`outside the years 0000-9999: ${date} ${days}`);
  return moved;
}

/**
 * Whole calendar days from `from` to `to`: 0 on the same day, negative when `to` is earlier.
 * 2006-07-19 to 2006-09-15 is 58 and 2006-08-30 to 2006-10-13 is 44 (WINECAP06). Summer time plays no part.
 * Throws RangeError when either is no date.
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return requireDayNumber(to) - requireDayNumber(from);
}

// Making one takes a hundred times as long as using it.
const formats = new Map<string, Intl.DateTimeFormat>();

function dayIn(timeZone: string): Intl.DateTimeFormat {
  const known = formats.get(timeZone);
  if (known !== undefined) return known;
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  });
  formats.set(timeZone, format);
  return format;
}

/** The calendar date of an instant in an IANA time zone. Throws RangeError for an unknown zone or invalid Date. */
export function dateInZone(instant: Date, timeZone: string): CalendarDate {
  const parts = dayIn(timeZone).formatToParts(instant);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
}

/**
 * Today's date at a site: the calendar date of `now` in the site's zone.
 * 2026-07-04T01:30Z is still 2026-07-03 in New York.
 */
export function todayInZone(timeZone: string, now: Date): CalendarDate {
  return dateInZone(now, timeZone);
}
