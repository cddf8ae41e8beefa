import { dateInZone } from '@/lib/growing/calendar-date';
import { dateValues } from './date-values';

function clockText(instant: Date, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(instant);
}

/** What a moment field holds for a stored instant, by the clock of a site. */
export function momentValues(name: string, instant: Date | null, timeZone: string): Record<string, string> {
  if (instant === null) return {};
  return {
    ...dateValues(name, dateInZone(instant, timeZone)),
    [`${name}__time`]: clockText(instant, timeZone),
  };
}

/** What a moment field holds for now: today chosen, the time filled in. */
export function nowValues(name: string, now: Date, timeZone: string): Record<string, string> {
  return { [`${name}__quick`]: dateInZone(now, timeZone), [`${name}__time`]: clockText(now, timeZone) };
}
