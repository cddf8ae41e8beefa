import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type TokenView, tokenSelect, tokenView } from './token-view';

export type ListedToken = TokenView & {
  readonly own: boolean;
  /** Whose it is; empty once the name has been erased. */
  readonly personName: string;
  readonly siteNames: readonly string[];
};

/** Tokens newest first: a person's own, and for a coordinator all of the network, those that do not work any more too. */
export async function listTokens({ db, actor }: ReadContext, now: Date): Promise<ListedToken[]> {
  const rows = await db.apiToken.findMany({ select: tokenSelect, orderBy: { id: 'desc' }, take: 500 });
  const sites = await db.site.findMany({ select: { id: true, name: true } });
  const people = await db.personContact.findMany({
    where: { personId: { in: rows.map(({ personId }) => personId) } },
    select: { personId: true, name: true },
  });
  return rows.map((row) => ({
    ...tokenView(row, now),
    own: row.personId === actor.personId,
    personName: people.find(({ personId }) => personId === row.personId)?.name ?? '',
    siteNames: sites.filter(({ id }) => row.siteIds.includes(id)).map(({ name }) => name),
  }));
}
