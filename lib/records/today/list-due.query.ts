import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, MethodKind } from '@/lib/database/generated/enums';
import { addDays, daysBetween, todayInZone } from '@/lib/growing/calendar-date';
import { quietDays } from '@/lib/growing/quiet-days';
import { asCalendarDate } from '../fields/stored-date';

const mostBatches = 500;

type Due = {
  readonly siteName: string;
  /** The day it is due, by the site's calendar; earlier than today is overdue. */
  readonly on: string;
  readonly overdueDays: number;
};

/** One line of a member's first page: what to do, where, and since when it is due. */
export type DueLine = Due &
  (
    | {
        readonly kind: 'treatment-running';
        readonly runId: string;
        readonly code: string;
        readonly method: MethodKind;
      }
    | {
        readonly kind: 'look' | 'first-harvest' | 'next-flush' | 'quiet';
        readonly batchId: string;
        readonly code: string;
        readonly container: ContainerKind;
        readonly speciesEn: string;
        readonly speciesEs: string;
        readonly dayNumber: number;
      }
  );

/** What is due now at the actor's sites, longest due first, worked out from the records and the species' timing. */
export async function listDue({ db }: ReadContext, now: Date): Promise<DueLine[]> {
  const lines: DueLine[] = [];
  const runs = await db.treatmentRun.findMany({
    where: { voidedAt: null, endedAt: null },
    include: { site: true, method: true },
    orderBy: { startedAt: 'asc' },
    take: 50,
  });
  for (const run of runs) {
    const on = todayInZone(run.site.timeZone, run.startedAt);
    const overdueDays = daysBetween(on, todayInZone(run.site.timeZone, now));
    lines.push({
      kind: 'treatment-running',
      runId: run.id,
      code: run.code,
      method: run.method.kind,
      siteName: run.site.name,
      on,
      overdueDays,
    });
  }
  const batches = await db.batch.findMany({
    where: { voidedAt: null, closedOn: null },
    include: {
      site: true,
      species: true,
      looks: { where: { voidedAt: null }, orderBy: { lookedOn: 'desc' }, take: 1 },
      findings: { where: { voidedAt: null }, orderBy: { foundOn: 'desc' }, take: 1 },
      checks: { where: { voidedAt: null }, orderBy: { checkedOn: 'desc' }, take: 1 },
      weighingLines: {
        where: { voidedAt: null, weighing: { voidedAt: null } },
        include: { weighing: true },
        orderBy: { weighing: { weighedOn: 'desc' } },
        take: 1,
      },
    },
    orderBy: { inoculatedOn: 'desc' },
    take: mostBatches,
  });
  for (const batch of batches) {
    const today = todayInZone(batch.site.timeZone, now);
    const inoculatedOn = asCalendarDate(batch.inoculatedOn);
    const date = (value: Date | undefined) => (value === undefined ? undefined : asCalendarDate(value));
    const picked = date(batch.weighingLines[0]?.weighing.weighedOn);
    const inspected = [date(batch.looks[0]?.lookedOn), date(batch.findings[0]?.foundOn)];
    const seen = [inoculatedOn, picked, date(batch.checks[0]?.checkedOn), ...inspected].filter(
      (one) => one !== undefined,
    );
    const lastEntry = seen.sort().at(-1) ?? inoculatedOn;
    const windowEnd =
      batch.contaminationAssessedOn === null ? undefined : asCalendarDate(batch.contaminationAssessedOn);
    const dueOn = (kind: 'look' | 'first-harvest' | 'next-flush' | 'quiet', on: string) => {
      if (on > today) return;
      lines.push({
        kind,
        batchId: batch.id,
        code: batch.code,
        container: batch.containerKind,
        speciesEn: batch.species.nameEn,
        speciesEs: batch.species.nameEs,
        dayNumber: daysBetween(inoculatedOn, today),
        siteName: batch.site.name,
        on,
        overdueDays: daysBetween(on, today),
      });
    };
    const quietOn = addDays(lastEntry, quietDays(batch.containerKind));
    const { firstHarvestDays, betweenFlushesDays } = batch.species;
    if (windowEnd !== undefined && !inspected.some((one) => one !== undefined && one >= windowEnd))
      dueOn('look', windowEnd);
    if (quietOn <= today) dueOn('quiet', quietOn);
    else if (picked === undefined && firstHarvestDays !== null)
      dueOn('first-harvest', addDays(inoculatedOn, firstHarvestDays));
    else if (picked !== undefined && betweenFlushesDays !== null)
      dueOn('next-flush', addDays(picked, betweenFlushesDays));
  }
  return lines.sort((a, b) => a.on.localeCompare(b.on) || a.code.localeCompare(b.code));
}
