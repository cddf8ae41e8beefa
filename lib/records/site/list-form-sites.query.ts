import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { isId } from '../fields/id-field';

export type FormSite = { readonly id: string; readonly name: string; readonly timeZone: string };

export type FormSites = {
  /** By name: all that a form can list, or, of too many, the one it is for and the record's own. */
  readonly sites: readonly FormSite[];
  /** There are more than are listed, and one is looked for by name. */
  readonly many: boolean;
  /** Of many the one that the form is for; undefined where it is not known yet. */
  readonly chosen: FormSite | undefined;
};

type Ask = {
  /** What the address of the form says, whatever that is. */
  readonly asked: unknown;
  /** The site of the record that the form begins from or puts right. */
  readonly own?: string | null | undefined;
  /** Leaves out sites that are closed: nothing new begins there. */
  readonly open?: boolean;
};

const columns = { id: true, name: true, timeZone: true } as const;

/**
 * The sites that a form which writes offers the actor. Of more than are listed none is offered but the one that the address
 * asks for, where the actor sees it, and the record's own; the form is for the first of these two that there is.
 */
export async function listFormSites(
  { db }: ReadContext,
  { asked, own = null, open = false }: Ask,
): Promise<FormSites> {
  const offered = { voidedAt: null, leftAt: null, ...(open ? { closedOn: null } : {}) };
  const sites = await db.site.findMany({
    where: offered,
    select: columns,
    orderBy: { name: 'asc' },
    take: mostSitesListed + 1,
  });
  if (sites.length <= mostSitesListed) return { sites, many: false, chosen: undefined };
  const named = typeof asked === 'string' && isId(asked) ? asked.toLowerCase() : null;
  const known = await db.site.findMany({
    where: {
      OR: [
        ...(named === null ? [] : [{ ...offered, id: named }]),
        ...(own === null ? [] : [{ voidedAt: null, id: own }]),
      ],
    },
    select: columns,
    orderBy: { name: 'asc' },
  });
  return {
    sites: known,
    many: true,
    chosen: known.find(({ id }) => id === named) ?? known.find(({ id }) => id === own),
  };
}
