import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type ShownSite, shownSiteOf } from '../sharing/shown-sites';

type Reader = Pick<ReadContext, 'db'>;

type End = {
  readonly batchId: string;
  /** Null where its site shares nothing. */
  readonly code: string | null;
  readonly site: ShownSite;
  /** Of a site that is named to the reader. */
  readonly siteName: string | null;
};

/**
 * The other ends of a batch's second lives, voided batches left out, also at sites that the actor cannot see: their
 * codes and what their sites share of themselves are all that is told.
 */
export async function secondLifeEnds({ db }: Reader, batchId: string): Promise<End[]> {
  const rows = await db.$queryRaw<{ batch_id: string; code: string | null; site_name: string | null }[]>`
    select batch_id, code, site_name, shared::text, mark from app.second_life_ends(${batchId}::uuid)`;
  return rows.map((row) => ({
    batchId: row.batch_id,
    code: row.code,
    site: shownSiteOf(row),
    siteName: row.site_name,
  }));
}

/** Links to a batch's standing second lives, wherever those are. */
export async function laterLinks(
  context: Reader,
  batchId: string,
): Promise<{ readonly batchId: string; readonly unitsMoved: number }[]> {
  const links = await context.db.secondLifeSource.findMany({
    where: { sourceBatchId: batchId, voidedAt: null },
    select: { batchId: true, unitsMoved: true },
  });
  if (links.length === 0) return [];
  const standing = new Set((await secondLifeEnds(context, batchId)).map((end) => end.batchId));
  return links.filter((link) => standing.has(link.batchId));
}

async function movedUnits(context: Reader, batchId: string, without: string | null): Promise<number> {
  const links = await laterLinks(context, batchId);
  return links
    .filter((link) => link.batchId !== without)
    .reduce((sum, { unitsMoved }) => sum + unitsMoved, 0);
}

/**
 * Units of batches that went on to second lives; batches that nothing was moved from are left out. `without` is a second
 * life being corrected.
 */
export async function movedUnitsOf(
  context: Reader,
  batchIds: readonly string[],
  without: string | null,
): Promise<ReadonlyMap<string, number>> {
  const linked = await context.db.secondLifeSource.findMany({
    where: { sourceBatchId: { in: [...batchIds] }, voidedAt: null },
    select: { sourceBatchId: true },
    distinct: ['sourceBatchId'],
  });
  const moved = new Map<string, number>();
  for (const { sourceBatchId } of linked)
    moved.set(sourceBatchId, await movedUnits(context, sourceBatchId, without));
  return moved;
}
