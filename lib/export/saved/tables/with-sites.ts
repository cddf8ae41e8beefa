import type { ReadContext } from '@/lib/access/context';
import { type SiteAsShown, sitesAsShown } from '@/lib/records/sharing/sites-as-shown';

/** A row with its site as far as the reader may know it: a run may have been made at a site out of sight. */
export type WithSite<R> = R & { readonly site: SiteAsShown };

export async function withSites<R>(
  context: ReadContext,
  rows: readonly R[],
  siteIdOf: (row: R) => string,
): Promise<WithSite<R>[]> {
  const siteOf = await sitesAsShown(context, rows.map(siteIdOf));
  return rows.map((row) => ({ ...row, site: siteOf(siteIdOf(row)) }));
}

/** The name of a site that shares it; blank for any other. */
export function nameOfSite({ shown }: SiteAsShown): string | null {
  return shown.kind === 'named' ? shown.name : null;
}
