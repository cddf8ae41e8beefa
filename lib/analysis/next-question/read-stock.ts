import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays } from '@/lib/growing/calendar-date';
import { grouped } from '../programme/grouped';

/** Material received within so many days may still lie there. Our choice. */
const stockDays = 180;

/** The materials that each site has received lately, by id. */
export async function readStock(
  { db, actor }: ReadContext,
  today: string,
): Promise<(siteId: string) => readonly string[]> {
  const received = await db.$queryRaw<{ siteId: string; materialId: string }[]>`
    select distinct r.site_id::text as "siteId", l.material_id::text as "materialId"
    from substrate_receipt r join substrate_lot l on l.network_id = r.network_id and l.id = r.substrate_lot_id
    where r.network_id = ${actor.networkId}::uuid and r.voided_at is null and l.voided_at is null
      and r.received_on >= ${addDays(today, -stockDays)}::date
    order by 1, 2`;
  const at = grouped(received, ({ siteId }) => siteId);
  return (siteId) => (at.get(siteId) ?? []).map(({ materialId }) => materialId);
}
