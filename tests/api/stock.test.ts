import { beforeAll, expect, it } from 'vitest';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed } from '../support/shed';
import { tokenOf } from './api-world';
import { clientOf } from './document-client';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let call: ReturnType<typeof clientOf>;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  call = clientOf(await tokenOf(people.member));
});

const without = (body: Record<string, unknown>, ...names: string[]) =>
  Object.fromEntries(Object.entries(body).filter(([name]) => !names.includes(name)));

it('makes a spawn lot, takes back what was read with one word mended, and refuses a revision that is past', async () => {
  const made = await call('createSpawnLots', {
    body: {
      speciesId: stock.oyster,
      form: 'grain',
      maker: 'Tarn Lab',
      madeOn: '2026-03-01',
      receivedGrams: 4_000,
    },
  });
  expect(made.status).toBe(201);
  const id = String(made.body.id);
  const read = await call('readSpawnLots', { id });
  const mended = {
    ...without(read.body, 'id', 'revision', 'generation', 'voided'),
    strain: 'M2',
    reason: 'Written on the bag',
  };
  const ifMatch = read.headers.get('etag') ?? '';
  const done = await call('correctSpawnLots', { id, ifMatch, body: mended });
  expect(done.body).toEqual({ ...read.body, strain: 'M2', revision: 2 });
  expect((await call('correctSpawnLots', { id, ifMatch, body: mended })).status).toBe(412);
});

it('receives a part of a new lot once, however often it is sent with one key', async () => {
  const lot = await call('createSubstrateLots', {
    body: {
      materialId: await wheat(),
      receivedOn: '2026-03-02',
      moistureSource: 'none',
      cutLengthMillimetres: 40,
    },
  });
  expect(lot.body).toMatchObject({ cutLengthMillimetres: 40, receivedGrams: null });
  const body = {
    ...{ substrateLotId: lot.body.id, siteId: people.millLane },
    ...{ receivedOn: '2026-03-05', massGrams: 12_000 },
  };
  const headers = { 'idempotency-key': 'one-bale' };
  const first = await call('createSubstrateReceipts', { body, headers });
  expect(first.status).toBe(201);
  expect((await call('createSubstrateReceipts', { body, headers })).body).toEqual(first.body);
  const query = { lot: String(lot.body.id) };
  expect((await call('listSubstrateReceipts', { query })).body.items).toEqual([first.body]);
  const early = { ...body, receivedOn: '2026-03-01' };
  expect((await call('createSubstrateReceipts', { body: early })).status).toBe(422);
});

it('starts a second life of a batch, which is told with its sources and read back by the spent batch', async () => {
  const filled = {
    ...{ siteId: people.millLane, speciesId: stock.oyster, containerKind: 'bag', unitCount: 20 },
    ...{ inoculatedOn: '2026-04-01', moistureSource: 'none' },
    components: [
      {
        lotId: stock.straw,
        treatment: `run:${stock.bathRun}`,
        role: 'substrate',
        massStage: 'before_treatment',
      },
    ],
    spawn: [{ lotId: stock.oysterSpawn }],
  };
  const spent = await call('createBatches', { body: filled });
  expect(spent.status, JSON.stringify(spent.body)).toBe(201);
  const life = {
    ...{ siteId: people.millLane, speciesId: stock.oyster, containerKind: 'bed', unitCount: 1 },
    ...{ inoculatedOn: '2026-07-10', moistureSource: 'none', way: 'mulched_with_straw' },
  };
  const sources = [{ batchId: spent.body.id, units: 12 }];
  const made = await call('createSecondLives', { body: { ...life, sources } });
  expect(made.body).toMatchObject({ secondLife: true, sources, way: 'mulched_with_straw' });
  const query = { source: String(spent.body.id) };
  expect((await call('listSecondLives', { query })).body.items).toEqual([made.body]);
  // A second life has rules of its own, which the correction of a batch does not know.
  const id = String(made.body.id);
  const ifMatch = (await call('readBatches', { id })).headers.get('etag') ?? '';
  const body = { ...filled, reason: 'tried' };
  expect((await call('correctBatches', { id, ifMatch, body })).status).toBe(404);
  const more = { ...life, sources: [{ batchId: spent.body.id, units: 9 }] };
  const refused = await call('createSecondLives', { body: more });
  expect(refused.status).toBe(422);
  expect(refused.body.errors).toMatchObject([{ pointer: '#/sources/0/units' }]);
});

async function wheat(): Promise<string> {
  const { body } = await call('readSubstrateLots', { id: stock.straw });
  return String(body.materialId);
}
