import type { ReadContext } from '@/lib/access/context';
import type { Prisma } from '@/lib/database/generated/client';

/** The runs that a batch at one of the sites can be made of: those there and those shared out to them. */
export async function runsAtSites(
  { db }: ReadContext,
  siteIds: readonly string[],
): Promise<Prisma.TreatmentRunWhereInput> {
  const own = { siteId: { in: [...siteIds] } };
  const shared = await db.treatmentAllocation.findMany({
    where: { ...own, voidedAt: null },
    select: { treatmentRunId: true },
  });
  if (shared.length === 0) return own;
  return { OR: [own, { id: { in: shared.map(({ treatmentRunId }) => treatmentRunId) } }] };
}
