import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { asCalendarDate } from '../fields/stored-date';
import { type SpawnLotView, spawnLotInclude, spawnLotView } from './spawn-lot-view';

export type SpawnUse = {
  readonly batchId: string;
  readonly code: string;
  readonly siteName: string;
  readonly inoculatedOn: string;
  readonly grams: number | null;
};

/** A spawn lot with its line of descent and the batches, of those the actor may see, that were made from it. */
export async function getSpawnLot(
  { db }: ReadContext,
  id: string,
): Promise<(SpawnLotView & { children: { id: string; code: string }[]; batches: SpawnUse[] }) | undefined> {
  if (!isId(id)) return undefined;
  const row = await db.spawnLot.findFirst({
    where: { id },
    include: { ...spawnLotInclude, children: { where: { voidedAt: null }, orderBy: { id: 'asc' } } },
  });
  if (!row) return undefined;
  const shares = await db.spawnShare.findMany({
    where: { spawnLotId: id, voidedAt: null, batch: { voidedAt: null } },
    include: { batch: { include: { site: true } } },
    orderBy: { id: 'desc' },
    take: 200,
  });
  return {
    ...spawnLotView(row),
    children: row.children.map((child) => ({ id: child.id, code: child.code })),
    batches: shares.map(({ batch, grams }) => ({
      batchId: batch.id,
      code: batch.code,
      siteName: batch.site.name,
      inoculatedOn: asCalendarDate(batch.inoculatedOn),
      grams,
    })),
  };
}
