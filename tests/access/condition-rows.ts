import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import {
  addConditionsInput,
  addPlaceInput,
  correctPlaceInput,
  importConditionsInput,
  placeBatchInput,
} from '@/lib/records/condition/condition.input';
import { correctPlace } from '@/lib/records/condition/correct-place.command';
import { getBatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { getPlace } from '@/lib/records/condition/get-place.query';
import { importConditions } from '@/lib/records/condition/import-conditions.command';
import { listPlaces } from '@/lib/records/condition/list-places.query';
import { placeBatch } from '@/lib/records/condition/place-batch.command';
import { command, type OperationRow, query } from './operation-rows';
import { arrange, now, revisionOf, type World } from './world';

/** A place of Mill Lane, each under a name of its own. */
let made = 0;
async function place({ people }: World): Promise<string> {
  made += 1;
  const raw = { siteId: people.millLane, name: `Tent ${made}` };
  return (await arrange(people.coordinator, addPlaceInput, addPlace, raw)).id;
}

const layout = {
  delimiter: 'comma',
  decimal: 'point',
  dateOrder: 'ymd',
  temperatureUnit: 'celsius',
  linesBefore: 0,
  columns: ['moment', 'temperature'],
};

/** A query about a place of Mill Lane that is made beforehand. */
function ofPlace(
  file: string,
  seen: (context: ReadContext, world: World, placeId: string) => Promise<boolean>,
): OperationRow {
  return {
    file,
    may: 'yy---',
    prepare: (world) => place(world),
    attempt: (world, actor, placeId) => readAs(actor, (context) => seen(context, world, String(placeId))),
  };
}

/** Places belong to a site: its members name, read and fill them. */
export const conditionRows: readonly OperationRow[] = [
  command('records/condition/add-place.command', 'yy---', addPlaceInput, addPlace, ({ people }) => {
    made += 1;
    return { siteId: people.millLane, name: `Shelf ${made}` };
  }),
  command('records/condition/correct-place.command', 'yy---', correctPlaceInput, correctPlace, async (w) => {
    const id = await place(w);
    made += 1;
    return {
      id,
      revision: await revisionOf(w, 'condition_place', id),
      reason: 'tried',
      name: `Room ${made}`,
    };
  }),
  command(
    'records/condition/add-conditions.command',
    'yy---',
    addConditionsInput,
    addConditions,
    async (w) => ({ placeId: await place(w), readAt: '2026-07-19T12:00:00Z', celsius: 20 }),
  ),
  command(
    'records/condition/import-conditions.command',
    'yy---',
    importConditionsInput,
    importConditions,
    async (w) => ({
      placeId: await place(w),
      layout,
      readings: [{ at: new Date('2026-07-19T12:00:00Z'), measure: 'temperature', value: 20 }],
    }),
  ),
  command('records/condition/place-batch.command', 'yy---', placeBatchInput, placeBatch, async (w) => ({
    batchId: w.batch,
    placeId: await place(w),
    placedOn: '2026-04-02',
  })),
  ofPlace('records/condition/list-places.query', async (c, w, placeId) =>
    (await listPlaces(c, w.people.millLane)).some(({ id }) => id === placeId),
  ),
  ofPlace(
    'records/condition/get-place.query',
    async (c, _w, placeId) => (await getPlace(c, placeId, now)) !== undefined,
  ),
  query(
    'records/condition/get-batch-conditions.query',
    'yy---',
    (c, w) => getBatchConditions(c, w.batch, now),
    (a) => a !== undefined,
  ),
];
