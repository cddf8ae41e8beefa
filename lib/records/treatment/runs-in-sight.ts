import type { ReadContext } from '@/lib/access/context';
import type { Prisma } from '@/lib/database/generated/client';
import { runsAtSites } from './runs-at-sites';

/**
 * The runs that the actor may see: a member those at the own sites and those shared out to them. The row policies decide
 * what is seen; said in the statement as well, indexes find them and no run of another site is asked about.
 */
export async function runsInSight(context: ReadContext): Promise<Prisma.TreatmentRunWhereInput> {
  const { actor } = context;
  return actor.role === 'coordinator' ? {} : runsAtSites(context, actor.siteIds);
}
