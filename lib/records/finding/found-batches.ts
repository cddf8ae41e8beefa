import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type BatchUnits, unitsOfBatches } from '../batch/batch-units';
import { lockUnitsOfBatches } from '../batch/lock-batch';
import { asCalendarDate } from '../fields/stored-date';

/** A batch as a finding needs it: its days, how many of its units can still be found, and what was found before. */
export type FoundBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly site: { readonly timeZone: string };
  readonly inoculatedOn: Date;
  readonly closedOn: Date | null;
  readonly units: Pick<BatchUnits, 'inoculated' | 'canBeFound' | 'namedContaminated'>;
  /** Findings that stand, each as its `foundKey`. */
  readonly recorded: ReadonlySet<string>;
};

/** What makes two findings of a batch look like one written down twice. */
export function foundKey(foundOn: string, units: number, sign: string): string {
  return `${foundOn} ${units} ${sign}`;
}

/** The batches of findings that the actor may see and that are not voided, by id; held until the transaction ends. */
export async function foundBatches(
  context: ReadContext,
  ids: readonly string[],
): Promise<Map<string, FoundBatch>> {
  const { db } = context;
  await lockUnitsOfBatches(context, ids);
  const rows = await db.batch.findMany({
    where: { id: { in: [...ids] }, voidedAt: null },
    // No other columns: a table of findings asks for thousands of batches.
    select: {
      ...{ id: true, code: true, siteId: true, unitCount: true, inoculatedOn: true, closedOn: true },
      site: { select: { timeZone: true } },
    },
  });
  const units = await unitsOfBatches(context, rows);
  const findings = await db.finding.findMany({
    where: { batchId: { in: [...ids] }, voidedAt: null },
    select: { batchId: true, foundOn: true, units: true, sign: true },
  });
  const recorded = new Map<string, Set<string>>();
  for (const { batchId, foundOn, units: found, sign } of findings) {
    const key = foundKey(asCalendarDate(foundOn), found, sign);
    recorded.set(batchId, (recorded.get(batchId) ?? new Set()).add(key));
  }
  return new Map(
    rows.flatMap((row, index) => {
      const own = units[index];
      if (own === undefined) return [];
      const { id, code, siteId, site, inoculatedOn, closedOn } = row;
      const batch = { id, code, siteId, site, inoculatedOn, closedOn };
      return [[id, { ...batch, units: own, recorded: recorded.get(id) ?? new Set() }]];
    }),
  );
}
