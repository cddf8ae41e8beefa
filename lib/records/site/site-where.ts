import type { Prisma } from '@/lib/database/generated/client';
import type { SiteSearch } from './site-search.input';

/** The sites that have not left, of those whose name or code holds what is asked for. */
export function siteWhere({ siteName }: Pick<SiteSearch, 'siteName'>): Prisma.SiteWhereInput {
  const here = { voidedAt: null, leftAt: null };
  if (siteName === null) return here;
  // A percent sign or an underscore of the reader's is none of the database's.
  const contains = siteName.replace(/[\\%_]/g, String.raw`\$&`);
  const held = { contains, mode: 'insensitive' } as const;
  return { ...here, OR: [{ name: held }, { code: held }] };
}
