import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A run that the actor may see and that is not voided, with method and readings; its site may be out of sight. */
export async function readRun(db: ReadContext['db'], id: string) {
  const run = await db.treatmentRun.findFirst({
    where: { id, voidedAt: null },
    include: { method: true, readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } } },
  });
  return run ?? undefined;
}
