import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { batchUnits } from './batch-units';
import { openBatch } from './open-batch';

/** What a form about a batch needs to know of it: its code, today at its site, and whether anything was weighed. */
export async function getBatchStanding(context: ReadContext, id: string, now: Date) {
  const batch = await openBatch(context, id);
  if (!batch) return undefined;
  const weighed = await context.db.weighingLine.count({
    where: { batchId: id, voidedAt: null, weighing: { voidedAt: null } },
  });
  const { live, moved } = await batchUnits(context, batch);
  return {
    id,
    live,
    moved,
    code: batch.code,
    revision: batch.revision,
    siteId: batch.siteId,
    speciesId: batch.speciesId,
    containerKind: batch.containerKind,
    unitCount: batch.unitCount,
    closed: batch.closedOn !== null,
    weighed: weighed > 0,
    today: todayInZone(batch.site.timeZone, now),
    /** The day on which its site left the network, where it has. */
    leftOn: batch.site.leftAt === null ? null : todayInZone(batch.site.timeZone, batch.site.leftAt),
  };
}
