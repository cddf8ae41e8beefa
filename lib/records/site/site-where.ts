import type { Prisma } from '@/lib/database/generated/client';
import type { SiteChoice } from './site-choice.input';

type Ask = Pick<SiteChoice, 'siteName'> & Partial<Pick<SiteChoice, 'siteFor'>>;

/** The sites that have not left, of those whose name or code holds what is asked for, and that serve what one is for. */
export function siteWhere({ siteName, siteFor }: Ask): Prisma.SiteWhereInput {
  const here = { voidedAt: null, leftAt: null, ...(siteFor === 'start' ? { closedOn: null } : {}) };
  if (siteName === null) return here;
  // A percent sign or an underscore of the reader's is none of the database's.
  const contains = siteName.replace(/[\\%_]/g, String.raw`\$&`);
  const held = { contains, mode: 'insensitive' } as const;
  return { ...here, OR: [{ name: held }, { code: held }] };
}
