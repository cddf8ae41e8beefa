import type { ReadContext } from '@/lib/access/context';
import { ofSiteFirst } from '../site/of-site-first';

const most = 100;

/** The substrate lots that a batch can be made of, latest first; where a site is given, those it received before the others. */
export async function latestSubstrateLots({ db }: ReadContext, at: string | undefined) {
  const latest = {
    include: { material: true },
    orderBy: [{ receivedOn: 'desc' as const }, { id: 'desc' as const }],
    take: most,
  };
  const all = await db.substrateLot.findMany({ where: { voidedAt: null }, ...latest });
  if (at === undefined) return all;
  const receipts = { some: { siteId: at, voidedAt: null } };
  const there = await db.substrateLot.findMany({ where: { voidedAt: null, receipts }, ...latest });
  return ofSiteFirst(there, all, most);
}
