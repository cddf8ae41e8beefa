import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate, asDate } from '../fields/stored-date';
import { armLabel } from './arm-label';

/** One run of a drawn list, with the batches of its site that it may have become; undefined when not the reader's. */
export async function getSlot({ db, actor }: ReadContext, id: string) {
  const slot = await db.trialSlot.findFirst({
    where: { id, voidedAt: null },
    include: {
      trial: true,
      arm: { include: { method: true } },
      site: true,
      batch: { select: { code: true } },
    },
  });
  if (!slot) return undefined;
  const { trial, arm, site } = slot;
  const from =
    trial.startedAt === null ? trial.startsOn : asDate(todayInZone(site.timeZone, trial.startedAt));
  const batches = await db.batch.findMany({
    where: {
      siteId: slot.siteId,
      voidedAt: null,
      inoculatedOn: { gte: from },
      trialSlots: { none: { id: { not: id } } },
    },
    orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
    take: 60,
  });
  return {
    id: slot.id,
    revision: slot.revision,
    trialId: trial.id,
    title: trial.title,
    ended: trial.endedAt !== null,
    siteName: site.name,
    arm: armLabel(arm.label, arm.method, actor.language),
    place: slot.place,
    plannedOn: asCalendarDate(slot.plannedOn),
    batchId: slot.batchId,
    batchCode: slot.batch?.code ?? null,
    departure: slot.departure,
    batches: batches.map((batch) => ({
      id: batch.id,
      code: batch.code,
      inoculatedOn: asCalendarDate(batch.inoculatedOn),
      units: batch.unitCount,
      containerKind: batch.containerKind,
    })),
  };
}
