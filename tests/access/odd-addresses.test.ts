import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { isId } from '@/lib/records/fields/id-field';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { listParticipants } from '@/lib/records/participant/list-participants.query';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { listPractices } from '@/lib/records/practice/list-practices.query';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { listSales } from '@/lib/records/sale/list-sales.query';
import { getSite } from '@/lib/records/site/get-site.query';
import { getSiteMethods } from '@/lib/records/site-method/get-site-methods.query';
import { getSpawnLot } from '@/lib/records/spawn-lot/get-spawn-lot.query';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { getSubstrateLot } from '@/lib/records/substrate-lot/get-substrate-lot.query';
import { listSubstrateLots } from '@/lib/records/substrate-lot/list-substrate-lots.query';
import { listTrainings } from '@/lib/records/training/list-trainings.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { listWeighings } from '@/lib/records/weighing/list-weighings.query';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import { testDatabase } from '../support/database';
import { makeWorld, now, type World } from './world';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
let world: World;
beforeAll(async () => {
  world = await makeWorld(superuser);
}, 180_000);

const id = '01a2176f-b6e8-75ac-859c-c830d90031f7';
const odd = ['-'.repeat(36), '0'.repeat(36), '\0', 'x'.repeat(2000)];
const oddPlaces = [
  ...odd,
  ...['2026-01-01', '2026-99-99', '0000-01-01', '+275000-01-01', '2026-01-01T00:00:00.000Z'].flatMap(
    (day) => [`${day}_${odd[0]}`, `${day}_${odd[1]}`, `${day}_${id}`],
  ),
];

/** Every list that goes on from a place in its address, by what stands in the address. */
const lists: Readonly<Record<string, (context: ReadContext, place: string) => Promise<unknown>>> = {
  batches: (context, after) => listBatches(context, batchFilterInput.parse({ after }), now),
  'batches before': (context, before) => listBatches(context, batchFilterInput.parse({ before }), now),
  'batches by filter': (context, word) =>
    listBatches(
      context,
      batchFilterInput.parse({ site: word, method: word, from: word, to: word, code: word }),
      now,
    ),
  invitations: (context, after) => listInvitations(context, after, now),
  participants: (context, after) => listParticipants(context, programmeFilterInput.parse({ after })),
  practices: (context, after) => listPractices(context, programmeFilterInput.parse({ after })),
  sales: (context, after) => listSales(context, programmeFilterInput.parse({ after })),
  'sales by filter': (context, word) =>
    listSales(context, programmeFilterInput.parse({ site: word, from: word, to: word, name: word })),
  'spawn lots': (context, after) => listSpawnLots(context, lotFilterInput.parse({ after })),
  'substrate lots': (context, after) => listSubstrateLots(context, lotFilterInput.parse({ after })),
  trainings: (context, after) => listTrainings(context, programmeFilterInput.parse({ after })),
  treatments: (context, after) => listTreatments(context, treatmentFilterInput.parse({ after })),
  weighings: (context, after) => listWeighings(context, weighingFilterInput.parse({ after })),
};

/** What pages ask by the id in their address alone. */
const records: Readonly<Record<string, (context: ReadContext, word: string) => Promise<unknown>>> = {
  site: getSite,
  'methods of a site': getSiteMethods,
  'spawn lot': getSpawnLot,
  'substrate lot': getSubstrateLot,
  treatment: (context, word) => getTreatment(context, word, now),
};

const reason = (error: unknown) => (error instanceof Error ? error.message.slice(-120) : String(error));
const ask = (work: (context: ReadContext) => Promise<unknown>) =>
  readAs(world.people.coordinator, work).then(() => 'answered', reason);

describe('an address that names nothing', () => {
  it.each(Object.keys(lists))('is the first page of %s, or one without rows', async (name) => {
    for (const place of oddPlaces)
      expect([
        place.slice(0, 60),
        await ask((context) => lists[name]?.(context, place) ?? Promise.resolve()),
      ]).toEqual([place.slice(0, 60), 'answered']);
  });

  it.each(Object.keys(records))('is no %s', async (name) => {
    for (const word of odd)
      expect([
        word.slice(0, 60),
        await ask(async (context) => expect(await records[name]?.(context, word)).toBeUndefined()),
      ]).toEqual([word.slice(0, 60), 'answered']);
  });

  it('is no id', () => {
    expect(odd.filter(isId)).toEqual([]);
  });
});
