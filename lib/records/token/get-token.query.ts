import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type TokenView, tokenSelect, tokenView } from './token-view';

/** A token of one's own, or as coordinator any of the network; undefined when it is not there or not the actor's. */
export async function getToken({ db }: ReadContext, id: string, now: Date): Promise<TokenView | undefined> {
  const row = await db.apiToken.findFirst({ where: { id }, select: tokenSelect });
  return row ? tokenView(row, now) : undefined;
}
