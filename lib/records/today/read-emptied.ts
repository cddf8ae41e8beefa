import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { unitLedger } from '../batch/unit-ledger';
import type { OpenBatchRow } from './read-open-batches';

/** Those of the batches in which no unit lives any more. Only batches whose records name every unit are counted out. */
export async function readEmptied(
  { db }: ReadContext,
  batches: readonly OpenBatchRow[],
): Promise<ReadonlySet<string>> {
  const named = batches.filter(({ unitCount, unitsNamed }) => unitsNamed >= unitCount);
  if (named.length === 0) return new Set();
  const live = { voidedAt: null };
  const rows = await db.batch.findMany({
    where: { id: { in: named.map(({ id }) => id) } },
    select: {
      id: true,
      unitCount: true,
      findings: {
        where: live,
        include: { followUps: { where: live, orderBy: [{ doneOn: 'asc' }, { id: 'asc' }] } },
      },
      losses: { where: live },
      secondLives: { where: { ...live, NOT: { batch: { voidedAt: { not: null } } } } },
    },
  });
  const emptied = rows.filter(({ unitCount, findings, losses, secondLives }) => {
    const moved = secondLives.reduce((sum, { unitsMoved }) => sum + unitsMoved, 0);
    return unitLedger({ inoculated: unitCount, findings, losses, moved }).live === 0;
  });
  return new Set(emptied.map(({ id }) => id));
}
