import type { Language } from '@/lib/database/generated/enums';
import { dateInZone } from '@/lib/growing/calendar-date';
import { formatDayMonth } from '../format/date-text';
import { formatTime } from '../format/instant-text';
import type { TemperatureUnit } from '../format/temperature-text';
import type { DynamicWords } from '../i18n/dynamic-words';

/** Who reads a line, in which words, and when. */
export type Reader = {
  readonly words: DynamicWords;
  readonly locale: string;
  readonly language: Language;
  readonly temperatureUnit: TemperatureUnit;
  readonly now: Date;
};

/** The time of day of an instant today, with the day where it is another: "16:40", "3 Nov, 16:40". */
export function dayOrTime(
  instant: Date,
  { timeZone, today }: { readonly timeZone: string; readonly today: string },
  locale: string,
): string {
  const time = formatTime(instant, timeZone, locale);
  const date = dateInZone(instant, timeZone);
  return date === today ? time : `${formatDayMonth(date, locale)}, ${time}`;
}
