import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, TrimState } from '@/lib/database/generated/enums';
import { unitsOfBatches } from '../batch/batch-units';
import { asCalendarDate } from '../fields/stored-date';

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
  context: ReadContext,
  ids: readonly string[],
  replaces: string | undefined,
): Promise<WeighedBatch[]> {
  const rows = await context.db.batch.findMany({
    where: { id: { in: [...ids] }, voidedAt: null },
    include: {
      site: { select: { timeZone: true, trimDefault: true } },
      weighingLines: {
        where: { voidedAt: null, weighing: { voidedAt: null } },
        select: {
          weighingId: true,
          freshGrams: true,
          flush: true,
          weighing: { select: { weighedOn: true } },
        },
      },
    },
  });
  const units = await unitsOfBatches(context, rows);
  const views = new Map<string, WeighedBatch>();
  for (const [index, row] of rows.entries()) {
    const lines = row.weighingLines.filter((line) => line.weighingId !== replaces);
    views.set(row.id, {
      id: row.id,
      code: row.code,
      siteId: row.siteId,
      site: row.site,
      inoculatedOn: row.inoculatedOn,
      containerKind: row.containerKind,
      unitCount: row.unitCount,
      liveUnits: units[index]?.live ?? 0,
      dryGrams: row.dryGrams,
      earlierGrams: lines.reduce((sum, line) => sum + line.freshGrams, 0),
      earlier: lines.map((line) => ({
        on: asCalendarDate(line.weighing.weighedOn),
        flush: line.flush,
      })),
    });
  }
  return ids.flatMap((id) => views.get(id) ?? []);
}
