import { dateTimeFormat } from '@/lib/growing/kept-formats';

const parts = /^(\d{4})-(\d{2})-(\d{2})$/;

function monthName(date: Date, locale: string, month: 'short' | 'long'): string {
  const name = dateTimeFormat(locale, { month, timeZone: 'UTC' }).format(date);
  return name.replace('.', '');
}

function written(date: string, locale: string, month: 'short' | 'long', year: boolean): string {
  const [, y, m, d] = parts.exec(date) ?? [];
  if (y === undefined || m === undefined || d === undefined)
    throw new RangeError(`not a calendar date: ${date}`);
  const name = monthName(new Date(Date.UTC(Number(y), Number(m) - 1, 1)), locale, month);
  return `${Number(d)}\u00a0${name}${year ? `\u00a0${y}` : ''}`;
}

/** A calendar date that no region misreads: '2026-07-04' is "4 Jul 2026", in Spanish "4 jul 2026". */
export function formatDate(date: string, locale: string): string {
  return written(date, locale, 'short', true);
}

/** The same without the year, for days near today: "4 Jul". */
export function formatDayMonth(date: string, locale: string): string {
  return written(date, locale, 'short', false);
}

/** With the weekday, where it matters: "Saturday 4 July 2026", "sábado 4 de julio de 2026". */
export function formatDateWithWeekday(date: string, locale: string): string {
  const weekday = dateTimeFormat(locale, { weekday: 'long', timeZone: 'UTC' });
  const day = written(date, locale, 'long', true);
  const told = locale.startsWith('es') ? day.replaceAll('\u00a0', '\u00a0de\u00a0') : day;
  return `${weekday.format(new Date(`${date}T00:00:00Z`))} ${told}`;
}
