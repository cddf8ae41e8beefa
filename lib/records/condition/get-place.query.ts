import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import type { ConditionTableLayout } from '@/lib/growing/condition-table-layout';
import { tableLayoutInput } from './condition.input';
import { conditionDays } from './condition-days';
import { openPlace } from './open-place';

const daysShown = 60;
const mostListed = 20;

/** A place with its last two months, what was read by hand and taken in lately, and the batches that stand there. */
export async function getPlace(context: ReadContext, id: string, now: Date) {
  const { db, actor } = context;
  const place = await openPlace(context, id);
  if (!place) return undefined;
  const { site, siteId } = place;
  const today = todayInZone(site.timeZone, now);
  const stay = { placeId: id, from: addDays(today, 1 - daysShown), to: today };
  const typed = await db.conditionReading.findMany({
    where: { placeId: id, voidedAt: null, importId: null },
    orderBy: [{ readAt: 'desc' }, { measure: 'asc' }],
    take: mostListed,
  });
  const imports = await db.conditionImport.findMany({
    where: { placeId: id, voidedAt: null },
    orderBy: { id: 'desc' },
    take: mostListed,
  });
  const batches = await db.$queryRaw<{ id: string; code: string }[]>`
    select b.id, b.code from batch b join lateral (
      select l.place_id from placement l where l.network_id = b.network_id and l.batch_id = b.id and l.voided_at is null
      order by l.placed_on desc, l.id desc limit 1) last on last.place_id = ${id}::uuid
    where b.network_id = ${actor.networkId}::uuid and b.site_id = ${siteId}::uuid
      and b.voided_at is null and b.closed_on is null
    order by b.inoculated_on desc, b.id desc limit 200`;
  const layout = tableLayoutInput.safeParse(place.tableLayout);
  return {
    id,
    revision: place.revision,
    name: place.name,
    note: place.note,
    site: { id: siteId, name: site.name, timeZone: site.timeZone },
    /** How the last table was written, for the next one. */
    layout: layout.success ? (layout.data satisfies ConditionTableLayout) : null,
    days: await conditionDays(context, [stay], site.timeZone),
    typed: typed.map(({ id: readingId, readAt, measure, value }) => ({
      id: readingId,
      at: readAt,
      measure,
      value: value.toNumber(),
    })),
    imports: imports.map(({ id: importId, createdAt, readingsRead, readingsAdded, firstAt, lastAt }) => ({
      id: importId,
      at: createdAt,
      read: readingsRead,
      added: readingsAdded,
      firstAt,
      lastAt,
    })),
    batches,
  };
}

/** A place as its page shows it: temperatures in Celsius, humidity in percent, carbon dioxide in ppm. */
export type PlaceView = NonNullable<Awaited<ReturnType<typeof getPlace>>>;
