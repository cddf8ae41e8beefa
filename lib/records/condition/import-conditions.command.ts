import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { conditionLimits } from '@/lib/growing/condition-limits';
import type { importConditionsInput } from './condition.input';
import { insertReadings } from './insert-readings';
import { openPlace } from './open-place';

export type Imported = {
  readonly placeId: string;
  readonly siteId: string;
  readonly read: number;
  readonly added: number;
};

const aheadMilliseconds = 86_400_000;

/**
 * Takes in the table of a logger as a whole or not at all. Values that the place has already are not added again, so
 * that the same table, or one that overlaps it, can be taken in twice; the layout is remembered for the next time.
 */
export async function importConditions(
  context: WriteContext,
  { id: wanted, placeId, layout, readings }: z.output<typeof importConditionsInput>,
): Promise<Result<Imported>> {
  const { db, actor, origin, now } = context;
  const place = await openPlace(context, placeId);
  if (!place) return notFound;
  const { siteId } = place;
  const id = wanted ?? newId();
  const repeat = await db.conditionImport.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ placeId, siteId, read: repeat.readingsRead, added: repeat.readingsAdded });
  const wrong = readings.find(({ at, measure, value }) => {
    const { least, most } = conditionLimits[measure];
    return value < least || value > most || at.getTime() > now.getTime() + aheadMilliseconds;
  });
  if (wrong) return invalid('readings', 'reading-out-of-range');
  const times = readings.map(({ at }) => at.getTime());
  const span = times.reduce(
    ({ first, last }, time) => ({ first: Math.min(first, time), last: Math.max(last, time) }),
    { first: times[0] ?? 0, last: times[0] ?? 0 },
  );
  await db.conditionImport.create({
    data: {
      networkId: actor.networkId,
      id,
      placeId,
      siteId,
      readingsRead: readings.length,
      readingsAdded: 0,
      firstAt: new Date(span.first),
      lastAt: new Date(span.last),
      tableLayout: layout,
      origin,
      createdById: actor.personId,
    },
  });
  const added = await insertReadings(context, { placeId, siteId, importId: id, firstId: null }, readings);
  await db.conditionImport.updateMany({ where: { id }, data: { readingsAdded: added } });
  await db.conditionPlace.updateMany({ where: { id: placeId }, data: { tableLayout: layout } });
  return ok({ placeId, siteId, read: readings.length, added });
}
