import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { networkCurrency } from '../programme/network-currency';
import type { PricedLot } from './cost.input';

/** What was paid for a lot, as far as it is written down; undefined when the lot is not there or not yours. */
export async function getLotPrice(context: ReadContext, of: PricedLot, about: string) {
  const { db } = context;
  const query = { where: { id: about, voidedAt: null }, select: { code: true } };
  const lot =
    of === 'substrate-lot' ? await db.substrateLot.findFirst(query) : await db.spawnLot.findFirst(query);
  if (!lot) return undefined;
  const price = await db.lotPrice.findFirst({
    where: {
      ...(of === 'substrate-lot' ? { substrateLotId: about } : { spawnLotId: about }),
      voidedAt: null,
    },
  });
  return {
    code: lot.code,
    currency: price?.currency ?? (await networkCurrency(context)),
    price: price && {
      id: price.id,
      revision: price.revision,
      paidMinor: price.paidMinor,
      forGrams: price.forGrams,
    },
  };
}

export type LotPriceView = NonNullable<Awaited<ReturnType<typeof getLotPrice>>>;
