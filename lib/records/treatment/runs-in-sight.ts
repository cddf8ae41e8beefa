import type { ReadContext } from '@/lib/access/context';
import type { Prisma } from '@/lib/database/generated/client';

/**
 * The runs that the actor may see: a member those at the own sites and those shared out to them. The row policies decide
 * what is seen; said in the statement as well, indexes find them and no run of another site is asked about.
 */
export async function runsInSight({ db, actor }: ReadContext): Promise<Prisma.TreatmentRunWhereInput> {
  if (actor.role === 'coordinator') return {};
  const own = { siteId: { in: [...actor.siteIds] } };
  const shared = await db.treatmentAllocation.findMany({
    where: { ...own, voidedAt: null },
    select: { treatmentRunId: true },
  });
  if (shared.length === 0) return own;
  return { OR: [own, { id: { in: shared.map(({ treatmentRunId }) => treatmentRunId) } }] };
}
