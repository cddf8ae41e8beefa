import { beforeAll, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { getBatch } from '@/lib/records/batch/get-batch.query';
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
  call = clientOf(await tokenOf(people.coordinator));
});

const told = async (name: string, body: Record<string, unknown>) => {
  const reply = await call(name, { body });
  expect(reply.status, JSON.stringify(reply.body)).toBe(201);
  expect(reply.headers.get('location') ?? reply.body.items).toBeDefined();
  return String(reply.body.id ?? '');
};

it('writes a batch from its treatment to its harvest and reads the figures that the pages show', async () => {
  const run = await told('createTreatments', {
    siteId: people.millLane,
    methodId: stock.hotWater,
    startedAt: '2026-03-30T09:00:00-04:00',
    waterMillilitres: 200_000,
    loadGrams: 10_000,
  });
  for (const [minute, celsius] of [72, 70, 68].entries())
    await told('createReadings', {
      treatmentRunId: run,
      readAt: `2026-03-30T13:${String(minute * 20).padStart(2, '0')}:00Z`,
      celsius,
    });
  const readings = await call('listReadings', { query: { treatment: run } });
  expect(readings.body.items).toHaveLength(3);
  const ended = await call('endTreatments', {
    id: run,
    ifMatch: '"1"',
    body: { endedAt: '2026-03-30T15:00:00Z', loadCelsiusAtSpawning: 22.5 },
  });
  expect(ended.body).toMatchObject({ endedAt: '2026-03-30T15:00:00.000Z', loadCelsiusAtSpawning: 22.5 });
  expect(ended.headers.get('etag')).toBe('"2"');

  const batch = await told('createBatches', {
    siteId: people.millLane,
    speciesId: stock.oyster,
    containerKind: 'bag',
    unitCount: 20,
    inoculatedOn: '2026-04-01',
    components: [
      {
        lotId: stock.straw,
        treatment: `run:${run}`,
        role: 'substrate',
        massGrams: 10_000,
        massStage: 'before_treatment',
      },
    ],
    spawn: [{ lotId: stock.oysterSpawn, massGrams: 1_200 }],
    filledMassGrams: 29_330,
    moistureSource: 'measured',
    moisturePercent: 70,
  });
  await told('createLooks', { batchId: batch, lookedOn: '2026-04-10' });
  const finding = await told('createFindings', {
    batchId: batch,
    foundOn: '2026-04-14',
    units: 3,
    sign: 'green',
    stage: 'colonising',
    action: 'discarded',
    unitNumbers: [3, 7, 8],
  });
  await told('createChecks', { batchId: batch, checkedOn: '2026-04-20', kind: 'fully_colonised' });
  await told('createLosses', { batchId: batch, lostOn: '2026-04-22', units: 1, cause: 'eaten' });
  await told('createLooks', { batchId: batch, lookedOn: '2026-05-20' });
  for (const [flush, freshGrams] of [4_200, 2_100].entries())
    await told('createWeighings', {
      weighedOn: `2026-05-${10 + flush * 10}`,
      freshGrams,
      lines: [{ batchId: batch, flush: flush + 1 }],
      soldGrams: freshGrams,
    });

  const corrected = await call('correctFindings', {
    id: finding,
    ifMatch: '"1"',
    body: {
      reason: 'One bag was only wet',
      foundOn: '2026-04-14',
      units: 2,
      sign: 'green',
      stage: 'colonising',
      action: 'discarded',
      unitNumbers: [3, 7],
    },
  });
  expect(corrected.status).toBe(200);
  expect(corrected.body).toMatchObject({ units: 2, unitNumbers: [3, 7] });
  const closed = await call('closeBatches', {
    id: batch,
    body: { closedOn: '2026-06-20', closeReason: 'finished', spentDestination: 'composted' },
  });
  expect(closed.body.closedOn).toBe('2026-06-20');

  const figures = await call('readBatchFigures', { id: batch });
  const page = await readAs(people.coordinator, (context) => getBatch(context, batch, new Date()));
  expect(figures.body).toMatchObject({
    freshGrams: 6_300,
    contamination: { kind: 'value', value: { kind: 'inspected', contaminatedByWindowEnd: 2 } },
  });
  expect(figures.body.biologicalEfficiency).toEqual(page?.figures.be);
  expect(figures.body.contamination).toEqual(page?.figures.contamination);

  const query = { from: '2026-01-01', to: '2026-12-31', container: 'bag' };
  const comparison = await call('readComparison', { query });
  const shown = await readAs(people.coordinator, (context) => readComparisonPage(context, query, new Date()));
  const plain = (value: unknown) =>
    JSON.parse(JSON.stringify(value, (key, one) => (key === 'asOf' ? undefined : one)));
  expect(plain(comparison.body.total)).toEqual(plain(shown?.comparison.total));
  expect(plain(comparison.body.methods)).toEqual(plain(shown?.comparison.methods));
  expect(comparison.body.total).toMatchObject({ contamination: { n: { batches: 1, units: 20 } } });
});

it('answers how spawn lots do once a model has been fitted in the background', async () => {
  const first = await call('readLotAnswers');
  expect([200, 202]).toContain(first.status);
  if (first.status === 202) expect(Number(first.headers.get('retry-after'))).toBeGreaterThan(0);
  await expect
    .poll(async () => (await call('readLotAnswers')).body.state, { timeout: 15_000, interval: 500 })
    .toBe('current');
});

it('takes what a sensor reads in a place, and one reading twice only once', async () => {
  const place = await told('createPlaces', { siteId: people.millLane, name: 'Fruiting tent' });
  const read = { placeId: place, readAt: '2026-06-01T04:00:00-04:00', celsius: 17.5, humidityPercent: 91 };
  const first = await call('createConditions', { body: read });
  expect(first.body.items).toHaveLength(2);
  await call('createConditions', { body: read });
  const listed = await call('listConditions', { query: { place } });
  expect(listed.body.items).toHaveLength(2);
  expect(listed.body.items).toContainEqual(
    expect.objectContaining({
      measure: 'temperature',
      value: 17.5,
      unit: 'Cel',
      readAt: '2026-06-01T08:00:00.000Z',
    }),
  );
});
