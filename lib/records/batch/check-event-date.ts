import { type Failure, invalid } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';

/** Something that happened to a batch lies between its inoculation and today, by the site's calendar. */
export function checkEventDate(
  field: string,
  date: string,
  batch: { inoculatedOn: Date; site: { timeZone: string } },
  now: Date,
): Failure | undefined {
  const inoculatedOn = batch.inoculatedOn.toISOString().slice(0, 10);
  if (date > todayInZone(batch.site.timeZone, now)) return invalid(field, 'future-date');
  if (date < inoculatedOn) return invalid(field, 'before', { date: inoculatedOn });
  return undefined;
}
