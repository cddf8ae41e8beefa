import type { CalendarDate } from './calendar-date';

/** Making a format takes far longer than using it, and a table has one instant a line. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatIn(timeZone: string): Intl.DateTimeFormat {
  const known = formats.get(timeZone);
  if (known) return known;
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  });
  formats.set(timeZone, format);
  return format;
}

function offsetMinutes(instant: Date, timeZone: string): number {
  const parts = formatIn(timeZone).formatToParts(instant);
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.find((one) => one.type === type)?.value);
  const local = Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
  return Math.round((local - Math.floor(instant.getTime() / 60_000) * 60_000) / 60_000);
}

/**
 * The instant at which a clock on the wall of `timeZone` shows `time` ('HH:MM') on `date`. In the hour that clocks
 * skip in spring the time moves on by an hour; in the hour they repeat in autumn the first passing is meant.
 */
export function instantInZone(date: CalendarDate, time: string, timeZone: string): Date {
  const asUtc = new Date(`${date}T${time}:00.000Z`);
  const before = offsetMinutes(new Date(asUtc.getTime() - 86_400_000), timeZone);
  const first = new Date(asUtc.getTime() - before * 60_000);
  if (offsetMinutes(first, timeZone) === before) return first;
  const after = offsetMinutes(new Date(asUtc.getTime() + 86_400_000), timeZone);
  const second = new Date(asUtc.getTime() - after * 60_000);
  return offsetMinutes(second, timeZone) === after ? second : first;
}
