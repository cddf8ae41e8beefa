import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';

const mostListed = 100;

export type SourceBatch = {
  readonly id: string;
  readonly code: string;
  readonly speciesId: string;
  readonly inoculatedOn: string;
};

/** Batches that may have units for a second life: whatever is left is checked at saving; latest first. */
export async function listSourceBatches({ db }: ReadContext): Promise<SourceBatch[]> {
  const rows = await db.batch.findMany({
    where: { voidedAt: null },
    select: { id: true, code: true, speciesId: true, inoculatedOn: true },
    orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
    take: mostListed,
  });
  return rows.map((row) => ({ ...row, inoculatedOn: asCalendarDate(row.inoculatedOn) }));
}
