import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import {
  addPlaceInput,
  importConditionsInput,
  placeBatchInput,
} from '@/lib/records/condition/condition.input';
import { importConditions } from '@/lib/records/condition/import-conditions.command';
import { placeBatch } from '@/lib/records/condition/place-batch.command';
import { testDay } from '../../support/bags';

let named = 0;

/** Names a tent of a site; answers its id. */
export async function makePlace(actor: Actor, siteId: string): Promise<string> {
  named += 1;
  const result = await runAs(
    actor,
    addPlaceInput,
    addPlace,
    { siteId, name: `Tent ${named}` },
    { now: testDay },
  );
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

export const layout = {
  delimiter: 'semicolon',
  decimal: 'comma',
  dateOrder: 'dmy',
  temperatureUnit: 'celsius',
  linesBefore: 1,
  columns: ['moment', 'temperature', 'humidity'],
};

/** A temperature each hour: `value`, one more, two more, and again. */
export const hours = (count: number, from = '2026-05-01T12:00:00Z', value = 20) =>
  Array.from({ length: count }, (_, hour) => ({
    at: new Date(Date.parse(from) + hour * 3_600_000),
    measure: 'temperature' as const,
    value: value + (hour % 3),
  }));

export const takeIn = (actor: Actor, placeId: string, readings: readonly object[], changes: object = {}) =>
  runAs(
    actor,
    importConditionsInput,
    importConditions,
    { placeId, layout, readings, ...changes },
    { now: testDay },
  );

export const put = (actor: Actor, batchId: string, placeId: string, placedOn: string) =>
  runAs(actor, placeBatchInput, placeBatch, { batchId, placeId, placedOn }, { now: testDay });
