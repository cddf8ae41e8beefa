import { z } from 'zod';
import { isCalendarDate } from '@/lib/growing/calendar-date';
import { isId, optionalIdField } from './id-field';

export const lotsPerPage = 50;
/** The database knows no year 0. */
const firstDay = '0001-01-01';

/** The filter in the address of a list of lots: `of` is the material or the species. */
export const lotFilterInput = z.object({
  of: optionalIdField.catch(null),
  after: z.string().max(60).nullable().catch(null).default(null),
});

export type LotFilter = z.output<typeof lotFilterInput>;

/** Where a page of a list goes on: after this date and id. */
export function lotCursor(after: string | null): { date: string; id: string } | undefined {
  const [date = '', id = ''] = (after ?? '').split('_');
  return isCalendarDate(date) && date >= firstDay && isId(id) ? { date, id } : undefined;
}
