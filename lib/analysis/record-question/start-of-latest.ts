import type { ReadContext } from '@/lib/access/context';
import { addDays, type CalendarDate } from '@/lib/growing/calendar-date';

/**
 * The first day on from which at most `most` batches of the actor were inoculated, or `from` where that is later: the
 * stretch that can be looked through batch by batch while somebody waits. The latest day is always taken whole.
 */
export async function startOfLatest(
  { db, actor }: ReadContext,
  from: CalendarDate,
  most: number,
): Promise<CalendarDate> {
  const own = actor.role === 'coordinator' ? null : [...actor.siteIds];
  // Row policies let the database think that hardly any batch is visible, so that it would gather and sort those of years.
  // Of a whole network the latest stand at the end of the index; those of a few sites are few.
  if (own === null)
    await db.$queryRaw`select set_config('enable_sort', 'off', true), set_config('enable_bitmapscan', 'off', true)`;
  const [beyond] = await db.$queryRaw<{ day: CalendarDate; last: boolean }[]>`
    select inoculated_on::text as day, inoculated_on = (select max(inoculated_on) from batch
        where network_id = ${actor.networkId}::uuid and voided_at is null
          and (${own}::uuid[] is null or site_id = any (${own}::uuid[]))) as last
    from batch
    where network_id = ${actor.networkId}::uuid and voided_at is null and inoculated_on >= ${from}::date
      and (${own}::uuid[] is null or site_id = any (${own}::uuid[]))
    order by inoculated_on desc offset ${most} limit 1`;
  if (own === null)
    await db.$queryRaw`select set_config('enable_sort', 'on', true), set_config('enable_bitmapscan', 'on', true)`;
  if (beyond === undefined) return from;
  return beyond.last ? beyond.day : addDays(beyond.day, 1);
}
