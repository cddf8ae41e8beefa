import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';

/** What a reader may know of a site that need not be theirs. */
export type ShownSite =
  | { readonly kind: 'named'; readonly name: string }
  /** `mark`: a drawn number that tells it from other sites without names; null where it has none. */
  | { readonly kind: 'anonymous'; readonly mark: number | null }
  | { readonly kind: 'left-out' };

const shownRow = z.object({
  site_id: z.string().optional(),
  shared: z.enum(['named', 'anonymous', 'not_at_all']),
  site_name: z.string().nullable(),
  mark: z.number().nullable(),
});

/** A row of the database's own answer, which alone decides what is told. */
export function shownSiteOf(row: unknown): ShownSite {
  const { shared, site_name, mark } = shownRow.parse(row);
  if (shared === 'named' && site_name !== null) return { kind: 'named', name: site_name };
  return shared === 'not_at_all' ? { kind: 'left-out' } : { kind: 'anonymous', mark };
}

/** What the reader may know of sites of their network, by id. Ids never leave with a site that is not named. */
export async function shownSites(
  { db }: Pick<ReadContext, 'db'>,
  siteIds: readonly string[],
): Promise<ReadonlyMap<string, ShownSite>> {
  const rows = await db.$queryRaw<{ site_id: string }[]>`
    select site_id::text, shared::text, site_name, mark from app.shown_sites(${[...siteIds]}::uuid[])`;
  return new Map(rows.map((row) => [row.site_id, shownSiteOf(row)]));
}
