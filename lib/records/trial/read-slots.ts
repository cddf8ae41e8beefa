import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { departuresOf, type TrialDeparture } from '@/lib/growing/trial-departure';
import { asCalendarDate } from '../fields/stored-date';
import { armLabel } from './arm-label';

export type SlotView = {
  readonly id: string;
  readonly revision: number;
  readonly siteId: string;
  readonly siteName: string;
  readonly armId: string;
  readonly arm: string;
  readonly block: number;
  readonly place: number;
  readonly plannedOn: string;
  readonly batch: { readonly id: string; readonly code: string; readonly inoculatedOn: string } | null;
  readonly departures: readonly TrialDeparture[];
  readonly told: string | null;
  /** Not made, although its day and the days of grace are over. */
  readonly missing: boolean;
  /** The next to be made at its site. */
  readonly next: boolean;
};

type Plan = {
  readonly id: string;
  readonly speciesId: string;
  readonly containerKind: string;
  readonly unitsPerRun: number;
  readonly lateAfterDays: number;
  readonly endedAt: Date | null;
};

/** The drawn list in the order of sites and places, with what became of each run. */
export async function readSlots({ db, actor }: ReadContext, plan: Plan, now: Date): Promise<SlotView[]> {
  const rows = await db.trialSlot.findMany({
    where: { trialId: plan.id, voidedAt: null },
    include: {
      arm: { include: { method: true } },
      site: true,
      batch: { include: { components: { where: { voidedAt: null }, select: { treatmentRunId: true } } } },
    },
    orderBy: { place: 'asc' },
  });
  const runsOf = (row: (typeof rows)[number]) =>
    row.batch?.components.flatMap(({ treatmentRunId }) => treatmentRunId ?? []) ?? [];
  return rows
    .map((row): SlotView => {
      const atSite = rows.filter(({ siteId }) => siteId === row.siteId);
      const { batch, site, arm } = row;
      const inoculatedOn = batch === null ? '' : asCalendarDate(batch.inoculatedOn);
      const earlier = atSite.filter(({ place }) => place < row.place);
      const own = runsOf(row);
      const plannedOn = asCalendarDate(row.plannedOn);
      const lastDay = addDays(plannedOn, plan.lateAfterDays);
      return {
        id: row.id,
        revision: row.revision,
        siteId: row.siteId,
        siteName: site.name,
        armId: row.armId,
        arm: armLabel(arm.label, arm.method, actor.language),
        block: row.block,
        place: row.place,
        plannedOn,
        batch: batch && { id: batch.id, code: batch.code, inoculatedOn },
        told: row.departure,
        departures:
          batch === null
            ? row.departure === null
              ? []
              : ['told']
            : departuresOf({
                plannedMethodId: arm.methodId,
                plannedSpeciesId: plan.speciesId,
                plannedContainer: plan.containerKind,
                plannedUnits: plan.unitsPerRun,
                plannedOn,
                lateAfterDays: plan.lateAfterDays,
                methodId: batch.methodId,
                speciesId: batch.speciesId,
                container: batch.containerKind,
                units: batch.unitCount,
                inoculatedOn,
                outOfOrder: earlier.some(
                  (one) => one.batch === null || asCalendarDate(one.batch.inoculatedOn) > inoculatedOn,
                ),
                sharedRun: rows.some(
                  (one) => one.id !== row.id && runsOf(one).some((run) => own.includes(run)),
                ),
                told: row.departure,
              }),
        missing: batch === null && (plan.endedAt !== null || todayInZone(site.timeZone, now) > lastDay),
        next: plan.endedAt === null && batch === null && earlier.every((one) => one.batch !== null),
      };
    })
    .sort((a, b) => a.siteName.localeCompare(b.siteName) || a.place - b.place);
}
