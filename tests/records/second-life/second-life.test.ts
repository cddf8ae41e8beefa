import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { batchUnits } from '@/lib/records/batch/batch-units';
import { correctSecondLife } from '@/lib/records/second-life/correct-second-life.command';
import { correctSecondLifeInput, startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { lose, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let first: string;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});
beforeEach(async () => {
  first = await startBags(people, stock);
});

const bed = (changes: object = {}) => ({
  siteId: people.millLane,
  speciesId: stock.oyster,
  containerKind: 'bed',
  unitCount: 1,
  inoculatedOn: '2026-05-18',
  moistureSource: 'none',
  bedArea: { text: '2', unit: 'm2' },
  sources: [{ batchId: first, units: 12 }],
  ...changes,
});
const start = (changes: object = {}, actor: Actor = people.member) =>
  runAs(actor, startSecondLifeInput, startSecondLife, bed(changes), { now: testDay });

const units = (id: string, actor = people.member) =>
  readAs(actor, (context) => batchUnits(context, { id, unitCount: 20 }));

describe('a second life', () => {
  it('is a batch of its own, linked to its sources, and takes their units', async () => {
    const result = await start();
    if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
    const batch = await readAs(people.member, ({ db }) =>
      db.batch.findFirstOrThrow({ where: { id: result.value.id }, include: { sources: true } }),
    );
    expect(batch).toMatchObject({
      secondLife: true,
      dryGrams: null,
      dryMassFrom: 'none',
      bedAreaCm2: 20_000,
    });
    expect(batch.sources).toMatchObject([{ sourceBatchId: first, unitsMoved: 12 }]);
    expect(await units(first)).toMatchObject({ moved: 12, live: 8 });
  });

  it('may gather several batches', async () => {
    const second = await startBags(people, stock);
    const sources = [
      { batchId: first, units: 20 },
      { batchId: second, units: 5 },
    ];
    expect((await start({ sources })).kind).toBe('ok');
    expect(await units(second)).toMatchObject({ live: 15 });
  });

  it('at a site that the grower of the first cannot see still takes its units', async () => {
    const sources = [{ batchId: first, units: 12 }];
    expect((await start({ siteId: people.quarry, sources }, people.coordinator)).kind).toBe('ok');
    expect(await units(first)).toMatchObject({ moved: 12, live: 8 });
  });

  it.each([
    ['more units than stand', { units: 16 }, 'sources.0.units', 'too-many-units'],
    ['no unit', { units: 0 }, 'sources.0.units', 'no-units'],
    [
      'a batch that is not there',
      { batchId: '00000000-0000-7000-8000-000000000000' },
      'sources.0.batchId',
      'not-found',
    ],
  ])('refuses %s', async (_what, source, field, code) => {
    await lose(people.member, first, { units: 5 });
    const sources = [{ batchId: first, units: 1, ...source }];
    expect(await start({ sources })).toMatchObject({ errors: [{ field, code }] });
  });

  it('refuses no source, one source twice, and a day before the first was inoculated', async () => {
    expect(await start({ sources: [] })).toMatchObject({
      errors: [{ field: 'sources.0.units', code: 'missing' }],
    });
    const twice = [
      { batchId: first, units: 1 },
      { batchId: first, units: 1 },
    ];
    expect(await start({ sources: twice })).toMatchObject({
      errors: [{ field: 'sources.1.batchId', code: 'chosen-twice' }],
    });
    expect(await start({ inoculatedOn: '2026-03-01' })).toMatchObject({
      errors: [{ field: 'inoculatedOn', code: 'before-inoculation' }],
    });
  });

  it('is not found at another site, in another network and for a funder', async () => {
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await start({}, actor)).not.toMatchObject({ kind: 'ok' });
    expect(await start({ siteId: people.quarry }, people.member)).toEqual({ kind: 'not-found' });
  });
});

describe('a corrected second life', () => {
  it('gives units back; a stale correction meets a conflict', async () => {
    const made = await start();
    if (made.kind !== 'ok') throw new Error(made.kind);
    const raw = {
      ...bed({ sources: [{ batchId: first, units: 20 }] }),
      id: made.value.id,
      revision: 1,
      reason: 'All went',
    };
    const correct = (actor: Actor) =>
      runAs(actor, correctSecondLifeInput, correctSecondLife, raw, { now: testDay });
    expect(await correct(people.neighbour)).toEqual({ kind: 'not-found' });
    expect(await correct(people.member)).toEqual({ kind: 'ok', value: { id: made.value.id } });
    expect(await units(first)).toMatchObject({ moved: 20, live: 0 });
    expect(await correct(people.member)).toEqual({ kind: 'conflict', current: 2 });
  });
});
