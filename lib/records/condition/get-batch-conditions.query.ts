import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';
import { conditionDays, type Stay } from './condition-days';

/**
 * Where a batch has stood and what was read there meanwhile. A place counts from the day the batch came until the day
 * before it went to another, until it was closed, or until today; a place of another site, from before a correction,
 * does not count.
 */
export async function getBatchConditions(context: ReadContext, batchId: string, now: Date) {
  const { db } = context;
  const batch = await db.batch.findFirst({
    where: { id: batchId },
    include: {
      site: true,
      species: true,
      placements: {
        where: { voidedAt: null, place: { voidedAt: null } },
        include: { place: true },
        orderBy: { placedOn: 'asc' },
      },
    },
  });
  if (!batch) return undefined;
  const { timeZone } = batch.site;
  const end = batch.closedOn === null ? todayInZone(timeZone, now) : asCalendarDate(batch.closedOn);
  const here = batch.placements.filter(({ place }) => place.siteId === batch.siteId);
  const stays = here.flatMap((one, index) => {
    const from = asCalendarDate(one.placedOn);
    const next = here[index + 1];
    const to = next === undefined ? end : addDays(asCalendarDate(next.placedOn), -1);
    return [{ placementId: one.id, placeId: one.placeId, placeName: one.place.name, from, to }];
  });
  const counted: Stay[] = stays.filter(({ from, to }) => from <= to);
  return {
    batchId,
    code: batch.code,
    siteId: batch.siteId,
    timeZone,
    open: batch.closedOn === null && batch.voidedAt === null,
    speciesCode: batch.species.code,
    secondLife: batch.secondLife,
    stays,
    days: await conditionDays(context, counted, timeZone),
  };
}

/** The places of a batch and what was read there; days by the calendar of its site. */
export type BatchConditions = NonNullable<Awaited<ReturnType<typeof getBatchConditions>>>;
