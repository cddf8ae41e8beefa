import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type UnitLedger, unitLedger } from './unit-ledger';

export type BatchUnits = UnitLedger & {
  /** Numbers of units named in a finding, and in a loss. */
  readonly namedContaminated: ReadonlySet<number>;
  readonly namedLost: ReadonlySet<number>;
};

/** The units of a batch by its records; `without` is the finding, loss or second life that a correction replaces. */
export async function batchUnits(
  { db }: ReadContext,
  batch: { readonly id: string; readonly unitCount: number },
  without: string | null = null,
): Promise<BatchUnits> {
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
  // A second life at a site that the actor cannot see still took its units.
  const { _sum } = await db.secondLifeSource.aggregate({
    where: {
      sourceBatchId: batch.id,
      ...live,
      NOT: { batch: { voidedAt: { not: null } } },
      ...(without === null ? {} : { batchId: { not: without } }),
    },
    _sum: { unitsMoved: true },
  });
  const ledger = unitLedger({ inoculated: batch.unitCount, findings, losses, moved: _sum.unitsMoved ?? 0 });
  const numbers = (rows: readonly { namedUnits: readonly { unitNumber: number }[] }[]) =>
    new Set(rows.flatMap(({ namedUnits }) => namedUnits.map(({ unitNumber }) => unitNumber)));
  return { ...ledger, namedContaminated: numbers(findings), namedLost: numbers(losses) };
}
