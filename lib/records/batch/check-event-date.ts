import { type Failure, invalid } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';

/**
 * Something that happened to a batch lies between its inoculation and today, by the site's calendar, and not after
 * its closing: an entry that arrives late is welcome, one for a later day needs the batch reopened. Days as they are
 * stored, or that of inoculation as YYYY-MM-DD.
 */
export function checkEventDate(
  field: string,
  date: string,
  batch: { inoculatedOn: Date | string; closedOn?: Date | null; site: { timeZone: string } },
  now: Date,
): Failure | undefined {
  const inoculatedOn =
    typeof batch.inoculatedOn === 'string' ? batch.inoculatedOn : asCalendarDate(batch.inoculatedOn);
  if (date > todayInZone(batch.site.timeZone, now)) return invalid(field, 'future-date');
  if (date < inoculatedOn) return invalid(field, 'before-inoculation', { date: inoculatedOn });
  const closedOn = batch.closedOn ? asCalendarDate(batch.closedOn) : undefined;
  if (closedOn !== undefined && date > closedOn) return invalid(field, 'after-closing', { date: closedOn });
  return undefined;
}
