import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { type LotFilter, lotsPerPage } from '../fields/lot-filter.input';
import { type SpawnLotView, spawnLotInclude, spawnLotView } from './spawn-lot-view';

/** Spawn lots of the network, latest recorded first (ids sort by time), a page at a time. */
export async function listSpawnLots(
  { db }: ReadContext,
  filter: LotFilter,
): Promise<{ lots: SpawnLotView[]; next: string | undefined }> {
  const after = filter.after !== null && isId(filter.after) ? filter.after : undefined;
  const rows = await db.spawnLot.findMany({
    where: {
      voidedAt: null,
      ...(filter.of === null ? {} : { speciesId: filter.of }),
      ...(after === undefined ? {} : { id: { lt: after } }),
    },
    include: spawnLotInclude,
    orderBy: { id: 'desc' },
    take: lotsPerPage + 1,
  });
  const lots = rows.slice(0, lotsPerPage).map(spawnLotView);
  return { lots, next: rows.length > lotsPerPage ? lots.at(-1)?.id : undefined };
}
