import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { movedUnitsOf } from './moved-units';
import { type UnitLedger, unitLedger } from './unit-ledger';

export type BatchUnits = UnitLedger & {
  /** Numbers of units named in a finding, and in a loss. */
  readonly namedContaminated: ReadonlySet<number>;
  readonly namedLost: ReadonlySet<number>;
};

type Counted = { readonly id: string; readonly unitCount: number };

/** The units of a batch by its records; `without` is the finding, loss or second life that a correction replaces. */
export async function batchUnits(
  context: ReadContext,
  batch: Counted,
  without: string | null = null,
): Promise<BatchUnits> {
  const [units] = await unitsOfBatches(context, [batch], without);
  if (units === undefined) throw new Error('no units of a batch');
  return units;
}

function byBatch<T extends { readonly batchId: string }>(rows: readonly T[]): ReadonlyMap<string, T[]> {
  const found = new Map<string, T[]>();
  for (const row of rows) {
    const before = found.get(row.batchId);
    if (before) before.push(row);
    else found.set(row.batchId, [row]);
  }
  return found;
}

/** The units of several batches, in their order. */
export async function unitsOfBatches(
  context: ReadContext,
  batches: readonly Counted[],
  without: string | null = null,
): Promise<BatchUnits[]> {
  const { db } = context;
  const live = { voidedAt: null };
  const ids = batches.map(({ id }) => id);
  const where = { batchId: { in: ids }, ...live, ...(without === null ? {} : { id: { not: without } }) };
  // Of several hundred batches at once each column that nobody needs counts.
  const namedUnits = { where: live, select: { unitNumber: true } };
  const findings = byBatch(
    await db.finding.findMany({
      where,
      select: {
        ...{ batchId: true, units: true, action: true, namedUnits },
        followUps: {
          where: live,
          orderBy: [{ doneOn: 'asc' }, { id: 'asc' }],
          select: { units: true, action: true },
        },
      },
    }),
  );
  const losses = byBatch(
    await db.loss.findMany({
      where,
      select: { batchId: true, units: true, contaminatedUnits: true, namedUnits },
    }),
  );
  const moved = await movedUnitsOf(context, ids, without);
  const numbers = (rows: readonly { namedUnits: readonly { unitNumber: number }[] }[]) =>
    new Set(rows.flatMap(({ namedUnits }) => namedUnits.map(({ unitNumber }) => unitNumber)));
  return batches.map(({ id, unitCount }) => {
    const own = { findings: findings.get(id) ?? [], losses: losses.get(id) ?? [] };
    return {
      ...unitLedger({ inoculated: unitCount, ...own, moved: moved.get(id) ?? 0 }),
      namedContaminated: numbers(own.findings),
      namedLost: numbers(own.losses),
    };
  });
}
