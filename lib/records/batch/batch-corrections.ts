import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A change of the batch's own record after its start. */
export type BatchCorrection = {
  readonly id: string;
  /** ISO instant. */
  readonly at: string;
  readonly byId: string | null;
  readonly reason: string;
};

const mostShown = 50;

/** Corrections, with their reasons, of what was typed when the batch was started; closing tells itself. */
export async function batchCorrections({ db }: ReadContext, recordId: string): Promise<BatchCorrection[]> {
  const rows = await db.history.findMany({
    where: { recordId, tableName: 'batch', action: 'changed', reason: { not: null } },
    orderBy: { at: 'asc' },
    take: mostShown,
  });
  return rows.flatMap(({ id, at, personId, reason }) =>
    reason === null ? [] : [{ id, at: at.toISOString(), byId: personId, reason }],
  );
}
