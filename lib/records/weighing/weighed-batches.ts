import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, TrimState } from '@/lib/database/generated/enums';
import { liveUnits } from '@/lib/growing/live-units';
import { asCalendarDate } from '../fields/stored-date';
import { lastActions } from '../finding/last-actions';

/** A batch as a weighing needs it: how much it already gave, and how many units are alive. */
export type WeighedBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly site: { timeZone: string; trimDefault: TrimState };
  readonly inoculatedOn: Date;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly liveUnits: number;
  readonly dryGrams: number | null;
  readonly earlierGrams: number;
  readonly earlier: readonly { readonly on: string; readonly flush: number }[];
};

/** The batches of a weighing in the order asked for; unknown ones are left out. `replaces` is a weighing not to count. */
export async function weighedBatches(
  { db }: ReadContext,
  ids: readonly string[],
  replaces: string | undefined,
): Promise<WeighedBatch[]> {
  const rows = await db.batch.findMany({
    where: { id: { in: [...ids] }, voidedAt: null },
    include: {
      site: true,
      findings: {
        where: { voidedAt: null },
        include: { followUps: { where: { voidedAt: null }, orderBy: { doneOn: 'asc' } } },
      },
      losses: { where: { voidedAt: null } },
      weighingLines: { where: { voidedAt: null, weighing: { voidedAt: null } }, include: { weighing: true } },
    },
  });
  const views = rows.map((row): WeighedBatch => {
    const lost = row.losses.reduce((sum, loss) => sum + loss.units - loss.contaminatedUnits, 0);
    const contaminated = row.findings.flatMap((finding) => lastActions(finding, finding.followUps));
    const live = liveUnits(row.unitCount, contaminated, lost);
    const lines = row.weighingLines.filter((line) => line.weighingId !== replaces);
    return {
      id: row.id,
      code: row.code,
      siteId: row.siteId,
      site: row.site,
      inoculatedOn: row.inoculatedOn,
      containerKind: row.containerKind,
      unitCount: row.unitCount,
      liveUnits: live.kind === 'value' ? live.value : 0,
      dryGrams: row.dryGrams,
      earlierGrams: lines.reduce((sum, line) => sum + line.freshGrams, 0),
      earlier: lines.map((line) => ({
        on: asCalendarDate(line.weighing.weighedOn),
        flush: line.flush,
      })),
    };
  });
  return ids.flatMap((id) => views.find((view) => view.id === id) ?? []);
}
