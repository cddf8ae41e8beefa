import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ShownSite } from '../sharing/shown-sites';
import { secondLifeEnds } from './moved-units';

/**
 * A batch at the other end of a second life: the code on its units and what its site shares of itself; `visible` tells
 * whether the actor may open it.
 */
export type LinkedBatch = {
  readonly id: string;
  /** Null where its site shares nothing. */
  readonly code: string | null;
  readonly site: ShownSite;
  readonly units: number;
  readonly visible: boolean;
};

export type BatchLinks = {
  readonly sources: readonly LinkedBatch[];
  readonly secondLives: readonly LinkedBatch[];
  /** Units that went on, voided second lives left out. */
  readonly moved: number;
};

const live = { voidedAt: null };

/** Where a batch's units came from and where they went on. */
export async function batchLinks(context: ReadContext, batchId: string): Promise<BatchLinks> {
  const { db } = context;
  const links = await db.secondLifeSource.findMany({
    where: { OR: [{ batchId }, { sourceBatchId: batchId }], ...live },
    orderBy: { id: 'asc' },
  });
  if (links.length === 0) return { sources: [], secondLives: [], moved: 0 };
  const ends = await secondLifeEnds(context, batchId);
  const seen = await db.batch.findMany({
    where: { id: { in: ends.map((end) => end.batchId) } },
    select: { id: true },
  });
  const end = (id: string, units: number): LinkedBatch[] => {
    const found = ends.find((one) => one.batchId === id);
    if (found === undefined) return [];
    const visible = seen.some((one) => one.id === id);
    return [{ id, code: found.code, site: found.site, units, visible }];
  };
  const secondLives = links
    .filter((link) => link.sourceBatchId === batchId)
    .flatMap((link) => end(link.batchId, link.unitsMoved));
  return {
    sources: links
      .filter((link) => link.batchId === batchId)
      .flatMap((link) => end(link.sourceBatchId, link.unitsMoved)),
    secondLives,
    moved: secondLives.reduce((sum, { units }) => sum + units, 0),
  };
}
