import { readAs } from '@/lib/access/scoped-db';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import { addConditionsInput, addPlaceInput } from '@/lib/records/condition/condition.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { addReadingInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { arrange, type World } from '../access/world';
import { twentyBags } from '../support/shed';
import { stockCases } from './stock-cases';

/** What one operation is tried with: a fresh record of Mill Lane where it changes one. */
export type Tried = {
  readonly id?: string;
  readonly revision?: number;
  readonly query?: Readonly<Record<string, string>>;
  readonly body?: Readonly<Record<string, unknown>>;
};
export type Case = () => Promise<Tried>;

const reason = 'tried';

export async function casesOf(world: World): Promise<ReadonlyMap<string, Case>> {
  const { people, stock, batch } = world;
  const { coordinator, millLane } = people;
  const bags = twentyBags(people, stock);
  const newBatch = async () => (await arrange(coordinator, startBatchInput, startBatch, bags)).id;
  const place = crypto.randomUUID();
  await arrange(coordinator, addPlaceInput, addPlace, { id: place, siteId: millLane, name: 'Tent' });
  const look = { batchId: batch, lookedOn: '2026-04-13' };
  const finding = {
    ...{ batchId: batch, foundOn: '2026-04-15', units: 1 },
    ...{ sign: 'green', stage: 'colonising', action: 'isolated' },
  };
  const loss = { batchId: batch, lostOn: '2026-04-21', units: 1, cause: 'eaten' };
  const check = { batchId: batch, checkedOn: '2026-04-22', kind: 'pins_seen' };
  const weighed = { weighedOn: '2026-05-05', lines: [{ batchId: batch, flush: 1 }] };
  const run = { siteId: millLane, methodId: stock.hotWater, startedAt: '2026-03-30T14:00:00Z' };
  const newRun = async () => (await arrange(coordinator, startTreatmentInput, startTreatment, run)).id;
  const reading = async () => ({
    treatmentRunId: await newRun(),
    readAt: '2026-03-30T15:00:00Z',
    celsius: 70,
  });
  const conditions = { placeId: place, readAt: '2026-06-01T08:00:00Z', celsius: 18 };
  let hour = 0;
  const newCondition = async () => {
    const id = crypto.randomUUID();
    hour += 1;
    const readAt = new Date(Date.UTC(2026, 4, 1, hour)).toISOString();
    await arrange(coordinator, addConditionsInput, addConditions, { ...conditions, readAt, id });
    return id;
  };
  const newPlace = async () => {
    const id = crypto.randomUUID();
    await arrange(coordinator, addPlaceInput, addPlace, { id, siteId: millLane, name: `Shelf ${id}` });
    return id;
  };
  const bodyOf = {
    Looks: look,
    Findings: finding,
    Losses: loss,
    Checks: check,
    Weighings: { ...weighed, freshGrams: 120 },
  };
  const eventOf: readonly (readonly [keyof typeof bodyOf, () => Promise<string>])[] = [
    ['Looks', async () => (await arrange(coordinator, recordLookInput, recordLook, look)).id],
    [
      'Findings',
      async () => {
        const input = { ...finding, batchId: await newBatch() };
        return (await arrange(coordinator, recordFindingInput, recordFinding, input)).id;
      },
    ],
    [
      'Losses',
      async () => {
        const input = { ...loss, batchId: await newBatch() };
        return (await arrange(coordinator, recordLossInput, recordLoss, input)).id;
      },
    ],
    ['Checks', async () => (await arrange(coordinator, recordCheckInput, recordCheck, check)).id],
    [
      'Weighings',
      async () =>
        (await arrange(coordinator, recordWeighingInput, recordWeighing, { ...weighed, fresh: 100 })).id,
    ],
  ];
  const found: [string, Case][] = [];
  const add = (name: string, one: Case) => found.push([name, one]);
  const fixed = (id: string) => async () => ({ id });
  const at: readonly (readonly [string, Case])[] = [
    ['Sites', fixed(millLane)],
    ['Species', fixed(stock.oyster)],
    ['Materials', async () => ({ id: await materialOf(world) })],
    ['Methods', fixed(stock.lime)],
    ['SubstrateLots', fixed(stock.straw)],
    ['SpawnLots', fixed(stock.oysterSpawn)],
    ['Treatments', fixed(stock.bathRun)],
    [
      'Readings',
      async () => ({
        id: (await arrange(coordinator, addReadingInput, addReading, await reading())).id,
      }),
    ],
    ['Batches', fixed(batch)],
    ['Looks', fixed(world.look)],
    ['Findings', fixed(world.finding)],
    ['Losses', fixed(world.loss)],
    ['Checks', fixed(world.check)],
    ['Weighings', fixed(world.weighing)],
    ['Places', fixed(place)],
    ['Conditions', async () => ({ id: await newCondition() })],
  ];
  for (const [kind, one] of at) {
    add(`list${kind}`, async () => ({}));
    add(`read${kind}`, one);
  }
  for (const [kind, make] of eventOf) {
    const { batchId, ...body } = { batchId: undefined, ...bodyOf[kind] };
    add(`create${kind}`, async () => ({
      body: kind === 'Weighings' ? body : { ...body, batchId: kind === 'Looks' ? batchId : await newBatch() },
    }));
    add(`correct${kind}`, async () => ({ id: await make(), revision: 1, body: { ...body, reason } }));
    add(`void${kind}`, async () => ({ id: await make(), revision: 1, body: { reason } }));
  }
  const filled = {
    ...{ ...bags, filledMass: undefined, filledMassGrams: bags.filledMass },
    components: bags.components.map(({ mass, ...rest }) => ({ ...rest, massGrams: mass })),
    spawn: bags.spawn.map(({ mass, lotId }) => ({ lotId, massGrams: mass })),
  };
  const closing = { closedOn: '2026-07-01', closeReason: 'finished', spentDestination: 'composted' };
  const none = { ...closing, noHarvest: 'none_picked' };
  add('createBatches', async () => ({ body: filled }));
  add('correctBatches', async () => ({ id: await newBatch(), revision: 1, body: { ...filled, reason } }));
  add('closeBatches', async () => ({ id: await newBatch(), body: none }));
  add('reopenBatches', async () => {
    const id = await newBatch();
    await arrange(coordinator, closeBatchInput, closeBatch, { ...none, batchId: id });
    return { id, revision: 2, body: { reason } };
  });
  add('voidBatches', async () => ({ id: await newBatch(), revision: 1, body: { reason } }));
  add('createTreatments', async () => ({ body: run }));
  add('correctTreatments', async () => ({ id: await newRun(), revision: 1, body: { ...run, reason } }));
  add('endTreatments', async () => ({
    id: await newRun(),
    revision: 1,
    body: { endedAt: '2026-03-30T17:00:00Z' },
  }));
  add('voidTreatments', async () => ({ id: await newRun(), revision: 1, body: { reason } }));
  add('createReadings', async () => ({ body: await reading() }));
  add('voidReadings', async () => ({
    id: (await arrange(coordinator, addReadingInput, addReading, await reading())).id,
    revision: 1,
    body: { reason },
  }));
  add('createPlaces', async () => ({ body: { siteId: millLane, name: `Corner ${crypto.randomUUID()}` } }));
  add('voidPlaces', async () => ({ id: await newPlace(), revision: 1, body: { reason } }));
  add('createConditions', async () => ({ body: { ...conditions, placeId: await newPlace() } }));
  add('voidConditions', async () => ({ id: await newCondition(), revision: 1, body: { reason } }));
  for (const [name, one] of stockCases(world, await materialOf(world))) add(name, one);
  add('readComparison', async () => ({}));
  add('readBatchFigures', fixed(batch));
  add('readLotAnswers', async () => ({}));
  return new Map(found);
}

async function materialOf({ people, stock }: World): Promise<string> {
  const lot = await readAs(people.coordinator, ({ db }) =>
    db.substrateLot.findFirstOrThrow({ where: { id: stock.straw } }),
  );
  return lot.materialId;
}
