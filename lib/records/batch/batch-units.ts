import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { movedUnits } from './moved-units';
import { type UnitLedger, unitLedger } from './unit-ledger';

export type BatchUnits = UnitLedger & {
  /** Numbers of units named in a finding, and in a loss. */
  readonly namedContaminated: ReadonlySet<number>;
  readonly namedLost: ReadonlySet<number>;
};

/** The units of a batch by its records; `without` is the finding, loss or second life that a correction replaces. */
export async function batchUnits(
  context: ReadContext,
  batch: { readonly id: string; readonly unitCount: number },
  without: string | null = null,
): Promise<BatchUnits> {
  const { db } = context;
  const live = { voidedAt: null };
  const where = { batchId: batch.id, ...live, ...(without === null ? {} : { id: { not: without } }) };
  const findings = await db.finding.findMany({
    where,
    include: {
      followUps: { where: live, orderBy: [{ doneOn: 'asc' }, { id: 'asc' }] },
      namedUnits: { where: live },
    },
  });
  const losses = await db.loss.findMany({ where, include: { namedUnits: { where: live } } });
  const moved = await movedUnits(context, batch.id, without);
  const ledger = unitLedger({ inoculated: batch.unitCount, findings, losses, moved });
  const numbers = (rows: readonly { namedUnits: readonly { unitNumber: number }[] }[]) =>
    new Set(rows.flatMap(({ namedUnits }) => namedUnits.map(({ unitNumber }) => unitNumber)));
  return { ...ledger, namedContaminated: numbers(findings), namedLost: numbers(losses) };
}
