import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { ofSiteFirst } from '../site/of-site-first';

const mostListed = 100;

export type SourceBatch = {
  readonly id: string;
  readonly code: string;
  readonly speciesId: string;
  readonly inoculatedOn: string;
};

/**
 * Batches that may have units for a second life: whatever is left is checked at saving; latest first, where a site is given
 * those there before the others.
 */
export async function listSourceBatches({ db }: ReadContext, at?: string): Promise<SourceBatch[]> {
  const latest = {
    select: { id: true, code: true, speciesId: true, inoculatedOn: true },
    orderBy: [{ inoculatedOn: 'desc' as const }, { id: 'desc' as const }],
    take: mostListed,
  };
  const all = await db.batch.findMany({ where: { voidedAt: null }, ...latest });
  const there =
    at === undefined ? [] : await db.batch.findMany({ where: { voidedAt: null, siteId: at }, ...latest });
  const rows = ofSiteFirst(there, all, mostListed);
  return rows.map((row) => ({ ...row, inoculatedOn: asCalendarDate(row.inoculatedOn) }));
}
