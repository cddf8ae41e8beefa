import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A batch at the other end of a second life; its code is null where the actor cannot see it. */
export type LinkedBatch = {
  readonly id: string;
  readonly code: string | null;
  readonly units: number;
  readonly freshGrams: number;
};

const live = { voidedAt: null };

async function freshGrams({ db }: ReadContext, batchId: string): Promise<number> {
  const { _sum } = await db.weighingLine.aggregate({
    where: { batchId, ...live, weighing: live },
    _sum: { freshGrams: true },
  });
  return _sum.freshGrams ?? 0;
}

async function linked(context: ReadContext, id: string, units: number): Promise<LinkedBatch> {
  const batch = await context.db.batch.findFirst({ where: { id, ...live }, select: { code: true } });
  return { id, code: batch?.code ?? null, units, freshGrams: await freshGrams(context, id) };
}

/** Where a batch's units came from and where they went on. */
export async function batchLinks(
  context: ReadContext,
  batchId: string,
): Promise<{ sources: LinkedBatch[]; secondLives: LinkedBatch[] }> {
  const { db } = context;
  const sources = await db.secondLifeSource.findMany({ where: { batchId, ...live }, orderBy: { id: 'asc' } });
  const lives = await db.secondLifeSource.findMany({
    where: { sourceBatchId: batchId, ...live, NOT: { batch: { voidedAt: { not: null } } } },
    orderBy: { id: 'asc' },
  });
  const answer: { sources: LinkedBatch[]; secondLives: LinkedBatch[] } = { sources: [], secondLives: [] };
  for (const { sourceBatchId, unitsMoved } of sources)
    answer.sources.push(await linked(context, sourceBatchId, unitsMoved));
  for (const life of lives) answer.secondLives.push(await linked(context, life.batchId, life.unitsMoved));
  return answer;
}
