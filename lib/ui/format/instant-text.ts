import { dateInZone } from '@/lib/growing/calendar-date';
import { dateTimeFormat } from '@/lib/growing/kept-formats';
import { formatDate } from './date-text';

/** The time of day of an instant in a zone, as the reader's region writes it: "16:40" or "4:40 PM". */
export function formatTime(instant: Date, timeZone: string, locale: string): string {
  return dateTimeFormat(locale, { timeStyle: 'short', timeZone }).format(instant);
}

/** An instant in a zone: "4 Jul 2026, 4:40 PM". */
export function formatInstant(instant: Date, timeZone: string, locale: string): string {
  return `${formatDate(dateInZone(instant, timeZone), locale)}, ${formatTime(instant, timeZone, locale)}`;
}
