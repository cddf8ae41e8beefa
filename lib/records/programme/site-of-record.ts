import 'server-only';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { type Failure, invalid } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';

/** A site that the actor may see and that is not voided. */
export async function siteOfRecord({ db }: ReadContext, siteId: string) {
  return (await db.site.findFirst({ where: { id: siteId, voidedAt: null, leftAt: null } })) ?? undefined;
}

/** Refuses a day that has not come yet at the site. */
export function refuseFuture(
  field: string,
  date: string,
  site: { readonly timeZone: string },
  { now }: WriteContext,
): Failure | undefined {
  return date > todayInZone(site.timeZone, now) ? invalid(field, 'future-date') : undefined;
}
