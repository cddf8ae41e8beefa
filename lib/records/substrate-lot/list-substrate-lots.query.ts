import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type LotFilter, lotCursor, lotsPerPage } from '../fields/lot-filter.input';
import { asDate } from '../fields/stored-date';
import { type SubstrateLotView, substrateLotInclude, substrateLotView } from './substrate-lot-view';

/** Lots of the network, latest received first, a page at a time. */
export async function listSubstrateLots(
  { db }: ReadContext,
  filter: LotFilter,
): Promise<{ lots: SubstrateLotView[]; next: string | undefined }> {
  const after = lotCursor(filter.after);
  const rows = await db.substrateLot.findMany({
    where: {
      voidedAt: null,
      ...(filter.of === null ? {} : { materialId: filter.of }),
      ...(after === undefined
        ? {}
        : {
            OR: [
              { receivedOn: { lt: asDate(after.date) } },
              { receivedOn: asDate(after.date), id: { lt: after.id } },
            ],
          }),
    },
    include: substrateLotInclude,
    orderBy: [{ receivedOn: 'desc' }, { id: 'desc' }],
    take: lotsPerPage + 1,
  });
  const lots = rows.slice(0, lotsPerPage).map(substrateLotView);
  const last = lots.at(-1);
  return { lots, next: rows.length > lotsPerPage && last ? `${last.receivedOn}_${last.id}` : undefined };
}
