import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { sitesAsShown } from '@/lib/records/sharing/sites-as-shown';

/** The site of a record that one site may have made for another. */
export const siteIdTold = z
  .uuid()
  .nullable()
  .describe('Null for what another site made for one of yours: the id of a site out of sight is not told.');

/** Rows with the id of their site only where the reader sees that site. */
export async function withSitesTold<R extends { readonly siteId: string }>(
  context: ReadContext,
  rows: readonly R[],
): Promise<(Omit<R, 'siteId'> & { readonly siteId: string | null })[]> {
  const siteOf = await sitesAsShown(
    context,
    rows.map(({ siteId }) => siteId),
  );
  return rows.map((row) => ({ ...row, siteId: siteOf(row.siteId).id }));
}
