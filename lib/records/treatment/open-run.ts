import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A run that the actor may see and that is not voided, with its site, method and readings. */
export async function openRun({ db }: ReadContext, id: string) {
  const run = await db.treatmentRun.findFirst({
    where: { id, voidedAt: null },
    include: {
      site: true,
      method: true,
      readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } },
    },
  });
  return run ?? undefined;
}
