import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { type SubstrateLotView, substrateLotInclude, substrateLotView } from './substrate-lot-view';

export type LotUse = { readonly batchId: string; readonly code: string; readonly siteName: string };

/** A lot with the batches, of those the actor may see, that it went into. */
export async function getSubstrateLot(
  { db }: ReadContext,
  id: string,
): Promise<(SubstrateLotView & { batches: LotUse[] }) | undefined> {
  if (!isId(id)) return undefined;
  const row = await db.substrateLot.findFirst({ where: { id }, include: substrateLotInclude });
  if (!row) return undefined;
  const uses = await db.batch.findMany({
    where: { voidedAt: null, components: { some: { substrateLotId: id, voidedAt: null } } },
    include: { site: true },
    orderBy: [{ inoculatedOn: 'desc' }, { id: 'desc' }],
    take: 100,
  });
  const batches = uses.map((batch) => ({ batchId: batch.id, code: batch.code, siteName: batch.site.name }));
  return { ...substrateLotView(row), batches };
}
