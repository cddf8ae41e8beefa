import type { ReadContext } from '@/lib/access/context';
import { addDays, type CalendarDate } from '@/lib/growing/calendar-date';

/**
 * The first day on from which at most `most` batches of the actor were inoculated, or `from` where that is later: the
 * stretch that can be looked through batch by batch while somebody waits.
 */
export async function startOfLatest(
  { db, actor }: ReadContext,
  from: CalendarDate,
  most: number,
): Promise<CalendarDate> {
  const own = actor.role === 'coordinator' ? null : [...actor.siteIds];
  const [beyond] = await db.$queryRaw<{ day: CalendarDate }[]>`
    select inoculated_on::text as day from batch
    where network_id = ${actor.networkId}::uuid and voided_at is null and inoculated_on >= ${from}::date
      and (${own}::uuid[] is null or site_id = any (${own}::uuid[]))
    order by inoculated_on desc offset ${most} limit 1`;
  return beyond === undefined ? from : addDays(beyond.day, 1);
}
