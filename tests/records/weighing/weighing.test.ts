import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { weighedBatches } from '@/lib/records/weighing/weighed-batches';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let batchId: string;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});
beforeEach(async () => {
  batchId = await startBags(people, stock);
});

function weigh(changes: object = {}, confirmed: readonly string[] = []) {
  const usual = { weighedOn: '2026-05-10', fresh: { text: '1.36', unit: 'kg' }, lines: [{ batchId }] };
  const raw = { ...usual, ...changes };
  return runAs(people.member, recordWeighingInput, recordWeighing, raw, {
    now: testDay,
    confirmed: new Set(confirmed),
  });
}

async function saved(changes: object = {}) {
  const result = await weigh(changes);
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return readAs(people.member, ({ db }) => db.weighing.findFirstOrThrow({ where: { id: result.value.id } }));
}

describe('a crate on the scale', () => {
  it('is subtracted, and both are kept as they were typed', async () => {
    const weighing = await saved({ tare: { text: '120', unit: 'g' } });
    expect(weighing.freshGrams).toBe(1240);
    expect(weighing.entered).toEqual({
      fresh: { text: '1.36', unit: 'kg' },
      tare: { text: '120', unit: 'g' },
    });
  });

  it('left out or weighing nothing changes nothing', async () => {
    expect((await saved()).freshGrams).toBe(1360);
    expect((await saved({ tare: { text: '0', unit: 'g' } })).freshGrams).toBe(1360);
  });

  it('as heavy as the whole is refused', async () => {
    expect(await weigh({ tare: { text: '1.36', unit: 'kg' } })).toMatchObject({
      errors: [{ field: 'tare', code: 'tare-too-heavy' }],
    });
  });
});

describe('the batch of a weighing', () => {
  it('no longer counts units that went on to a second life', async () => {
    const bed = {
      siteId: people.millLane,
      speciesId: stock.oyster,
      containerKind: 'bed',
      unitCount: 1,
      inoculatedOn: '2026-05-18',
      moistureSource: 'none',
      bedArea: { text: '2', unit: 'm2' },
      sources: [{ batchId, units: 12 }],
    };
    const second = await runAs(people.member, startSecondLifeInput, startSecondLife, bed, { now: testDay });
    expect(second.kind).toBe('ok');
    const [batch] = await readAs(people.member, (context) => weighedBatches(context, [batchId], undefined));
    expect(batch).toMatchObject({ unitCount: 20, liveUnits: 8 });
  });

  it('closed as never picked from is so no longer, and stays closed', async () => {
    const closing = {
      batchId,
      closedOn: '2026-05-19',
      closeReason: 'finished',
      spentDestination: 'composted',
      noHarvest: 'none_picked',
    };
    const closed = await runAs(people.member, closeBatchInput, closeBatch, closing, {
      now: testDay,
      confirmed: new Set(['close-without-harvest']),
    });
    expect(closed.kind).toBe('ok');
    await saved();
    const batch = await readAs(people.member, ({ db }) =>
      db.batch.findFirstOrThrow({ where: { id: batchId } }),
    );
    expect(batch.noHarvest).toBeNull();
    expect(batch.closedOn).not.toBeNull();
  });

  it('is asked about when it would have given far more than its dry mass', async () => {
    expect(await weigh({ fresh: { text: '70', unit: 'kg' } })).toMatchObject({ kind: 'confirm' });
    expect(await weigh({ fresh: { text: '3000', unit: 'kg' } })).toMatchObject({
      errors: [{ field: 'fresh', code: 'too-much-for-batch' }],
    });
  });

  it('has to be chosen', async () => {
    expect(await weigh({ lines: [] })).toMatchObject({
      errors: [{ field: 'lines.0.batchId', code: 'missing-choice' }],
    });
  });
});
