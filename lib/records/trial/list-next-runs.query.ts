import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { armLabel } from './arm-label';

/** The next run of every running trial at every site of the reader: what is drawn to be made there now. */
export async function listNextRuns({ db, actor }: ReadContext) {
  const rows = await db.trialSlot.findMany({
    where: { batchId: null, voidedAt: null, trial: { endedAt: null, voidedAt: null } },
    include: { trial: true, arm: { include: { method: true } }, site: true },
    orderBy: { place: 'asc' },
  });
  const first = new Map(rows.toReversed().map((row) => [`${row.trialId} ${row.siteId}`, row]));
  return [...first.values()]
    .map(({ id, trial, arm, site, plannedOn }) => ({
      slotId: id,
      trialId: trial.id,
      title: trial.title,
      arm: armLabel(arm.label, arm.method, actor.language),
      methodId: arm.methodId,
      methodKind: arm.method?.kind ?? null,
      siteId: site.id,
      siteName: site.name,
      speciesId: trial.speciesId,
      containerKind: trial.containerKind,
      unitsPerRun: trial.unitsPerRun,
      plannedOn: asCalendarDate(plannedOn),
    }))
    .sort((a, b) => a.plannedOn.localeCompare(b.plannedOn) || a.siteName.localeCompare(b.siteName));
}

export type NextRun = Awaited<ReturnType<typeof listNextRuns>>[number];
