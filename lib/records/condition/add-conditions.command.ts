import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { conditionLimits } from '@/lib/growing/condition-limits';
import { momentInstant } from '../fields/moment-instant';
import { isFuture } from '../treatment/prepare-treatment';
import type { addConditionsInput } from './condition.input';
import { insertReadings, type Reading } from './insert-readings';
import { openPlace } from './open-place';

/**
 * Writes down what a person read in a place: any of temperature, humidity and carbon dioxide. A repeated post adds
 * nothing; another value at an instant that has one is refused.
 */
export async function addConditions(
  context: WriteContext,
  input: z.output<typeof addConditionsInput>,
): Promise<Result<{ placeId: string; siteId: string }>> {
  const { db, now } = context;
  const { placeId } = input;
  const place = await openPlace(context, placeId);
  if (!place) return notFound;
  const { siteId } = place;
  const repeat =
    input.id !== null && (await db.conditionReading.findFirst({ where: { id: input.id, placeId } }));
  if (repeat) return ok({ placeId, siteId });
  const { celsius, humidityPercent, carbonDioxidePpm } = input;
  const measured = { temperature: celsius, humidity: humidityPercent, carbon_dioxide: carbonDioxidePpm };
  if (Object.values(measured).every((value) => value === null)) return invalid('celsius', 'reading-empty');
  const { least, most } = conditionLimits.temperature;
  if (celsius !== null && celsius < least) return invalid('celsius', 'too-small', { min: `${least} °C` });
  if (celsius !== null && celsius > most) return invalid('celsius', 'too-large', { max: `${most} °C` });
  const at = input.readAt === null ? now : momentInstant(input.readAt, place.site.timeZone);
  if (isFuture(at, now)) return invalid('readAt', 'future-date');
  const readings = Object.entries(measured).flatMap(([measure, value]): Reading[] =>
    value === null ? [] : [{ at, measure: measure as Reading['measure'], value: Number(value.toFixed(1)) }],
  );
  const there = await db.conditionReading.findMany({ where: { placeId, readAt: at, voidedAt: null } });
  const differs = readings.some((reading) =>
    there.some(({ measure, value }) => measure === reading.measure && value.toNumber() !== reading.value),
  );
  if (differs) return invalid('readAt', 'already-there');
  await insertReadings(context, { placeId, siteId, importId: null, firstId: input.id }, readings);
  return ok({ placeId, siteId });
}
