import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { minorOf } from '../programme/network-currency';
import type { changeMoneyInput } from './money.input';

/** Chooses the currency of a network and what an hour of work counts for. Amounts recorded before keep their currency. */
export async function changeMoney(
  { db, actor }: WriteContext,
  { revision, currency, labourPerHour }: z.output<typeof changeMoneyInput>,
): Promise<Result<{ currency: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const labour = labourPerHour === null ? ok(null) : minorOf('labourPerHour', labourPerHour, currency);
  if (labour.kind !== 'ok') return labour;
  const network = await db.network.findFirst({ where: { id: actor.networkId } });
  if (!network) return notFound;
  const { count } = await db.network.updateMany({
    where: { id: actor.networkId, revision },
    data: { currency, labourMinorPerHour: labour.value },
  });
  return count === 1 ? ok({ currency }) : { kind: 'conflict', current: network.revision };
}
