import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';

/** A run that the actor may see and that is not voided, with method and readings; its site may be out of sight. */
export async function readRun(db: ReadContext['db'], id: string) {
  if (!isId(id)) return undefined;
  const run = await db.treatmentRun.findFirst({
    where: { id, voidedAt: null },
    include: { method: true, readings: { where: { voidedAt: null }, orderBy: { readAt: 'asc' } } },
  });
  return run ?? undefined;
}
