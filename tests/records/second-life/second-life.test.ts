import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { readLives } from '@/lib/analysis/single-batch/read-lives';
import { batchUnits } from '@/lib/records/batch/batch-units';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { correctSecondLife } from '@/lib/records/second-life/correct-second-life.command';
import { correctSecondLifeInput, startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
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

describe('the two ends of a second life', () => {
  const elsewhere = async () => {
    const result = await start(
      { siteId: people.quarry, way: 'mulched_with_straw', sources: [{ batchId: first, units: 12 }] },
      people.coordinator,
    );
    if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
    return result.value;
  };
  const pageOf = (id: string, actor: Actor) => readAs(actor, (context) => getBatch(context, id, testDay));
  const codeOf = async (id: string) => (await pageOf(id, people.coordinator))?.batch.code;

  it('know each other by code and site at another site, and cannot open each other', async () => {
    const { id, code } = await elsewhere();
    const there = await pageOf(id, people.neighbour);
    expect(there?.batch).toMatchObject({ secondLife: true, secondLifeWay: 'mulched_with_straw' });
    expect(there?.sources).toEqual([
      {
        id: first,
        code: await codeOf(first),
        site: { kind: 'named', name: 'Mill Lane Garden' },
        units: 12,
        visible: false,
      },
    ]);
    expect(await pageOf(first, people.neighbour)).toBeUndefined();
    expect((await pageOf(first, people.member))?.secondLives).toEqual([
      { id, code, site: { kind: 'named', name: 'Quarry Farm' }, units: 12, visible: false },
    ]);
  });

  it('add up for who sees both, and are not known to who sees one', async () => {
    const { id } = await elsewhere();
    for (const [batchId, fresh, weighedOn] of [
      [first, 3_000, '2026-05-10'],
      [id, 500, '2026-05-19'],
    ] as const)
      await runAs(
        people.coordinator,
        recordWeighingInput,
        recordWeighing,
        { weighedOn, fresh, lines: [{ batchId, flush: 1 }] },
        { now: testDay },
      );
    const lives = (actor: Actor) => readAs(actor, (context) => readLives(context, first, testDay));
    expect(await lives(people.coordinator)).toMatchObject({
      firstGrams: 3_000,
      laterGrams: 500,
      togetherGrams: 3_500,
      perDryGramOfFirst: { kind: 'figure', parts: { numerator: 3_500 } },
    });
    expect(await lives(people.member)).toMatchObject({ firstGrams: 3_000, laterGrams: null });
    expect(await lives(people.neighbour)).toBeUndefined();
    const page = await pageOf(first, people.member);
    expect(page?.figures.freshGrams).toBe(3_000);
  });

  it('are no longer linked once the second life is voided', async () => {
    const { id } = await elsewhere();
    await runAs(people.coordinator, voidRecordInput, voidRecord, {
      ...{ kind: 'batch', id, revision: 1, reason: 'Never moved' },
    });
    expect((await pageOf(first, people.member))?.secondLives).toEqual([]);
    expect(await readAs(people.member, (context) => readLives(context, first, testDay))).toBeUndefined();
    expect(await units(first)).toMatchObject({ moved: 0, live: 20 });
  });

  it('keep the first batch from being voided while the second stands, at whatever site', async () => {
    await elsewhere();
    const raw = { kind: 'batch', id: first, revision: 1, reason: 'A mistake' };
    expect(await runAs(people.member, voidRecordInput, voidRecord, raw)).toMatchObject({ kind: 'invalid' });
  });

  it('let the receiving site correct its record without touching where the units came from', async () => {
    const { id } = await elsewhere();
    const correct = (sources: object[]) =>
      runAs(
        people.neighbour,
        correctSecondLifeInput,
        correctSecondLife,
        {
          ...bed({ siteId: people.quarry, sources, way: 'buried_in_soil' }),
          ...{ id, revision: 1, reason: 'It was buried' },
        },
        { now: testDay },
      );
    expect(await correct([{ batchId: first, units: 13 }])).toMatchObject({ errors: [{ code: 'not-found' }] });
    expect(await correct([{ batchId: first, units: 12 }])).toMatchObject({ kind: 'ok' });
    expect((await pageOf(id, people.neighbour))?.batch.secondLifeWay).toBe('buried_in_soil');
    expect(await units(first)).toMatchObject({ moved: 12 });
  });
});

describe('a chain of lives', () => {
  it('refuses another species and a source that came from the batch itself', async () => {
    expect(await start({ speciesId: stock.shiitake })).toMatchObject({
      errors: [{ field: 'sources.0.batchId', code: 'source-other-species' }],
    });
    const second = await start();
    if (second.kind !== 'ok') throw new Error(second.kind);
    const third = await start({ sources: [{ batchId: second.value.id, units: 1 }] });
    if (third.kind !== 'ok') throw new Error(third.kind);
    const raw = {
      ...bed({ sources: [{ batchId: third.value.id, units: 1 }] }),
      ...{ id: second.value.id, revision: 1, reason: 'Wrong source' },
    };
    expect(
      await runAs(people.member, correctSecondLifeInput, correctSecondLife, raw, { now: testDay }),
    ).toMatchObject({ errors: [{ field: 'sources.0.batchId', code: 'comes-from-itself' }] });
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
