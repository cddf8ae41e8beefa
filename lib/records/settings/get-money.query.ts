import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The currency of the actor's network and what an hour of work counts for, in minor units; null: kept in minutes. */
export async function getMoney({ db, actor }: ReadContext) {
  const network = await db.network.findFirst({ where: { id: actor.networkId } });
  if (!network || actor.role === 'funder') return undefined;
  const { revision, currency, labourMinorPerHour } = network;
  return { revision, currency, labourMinorPerHour };
}
