import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs, type WriteOptions } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { parseBatchCode } from '@/lib/growing/batch-code';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-05-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const bags = (changes: object = {}) => ({ ...twentyBags(people, stock), ...changes });
const start = (actor: Actor, raw: unknown, options: WriteOptions = {}) =>
  runAs(actor, startBatchInput, startBatch, raw, { now, ...options });

async function started(raw: unknown, options: WriteOptions = {}) {
  const result = await start(people.member, raw, options);
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return readAs(people.member, ({ db }) =>
    db.batch.findFirstOrThrow({
      where: { id: result.value.id },
      include: { components: true, spawnShares: true },
    }),
  );
}

describe('a batch of twenty bags', () => {
  it('is kept with its treatment run, spawn share, dry mass and judging days', async () => {
    const batch = await started(bags());
    expect(parseBatchCode(batch.code)).toBe(batch.code);
    expect(batch).toMatchObject({
      methodId: stock.hotWater,
      mixedMethod: false,
      dryMassFrom: 'filled_mass',
      dryGrams: 8799,
      dryAssumed: false,
      spawnGrams: 1200,
      startedById: people.member.personId,
      revision: 1,
    });
    expect(batch.contaminationAssessedOn?.toISOString().slice(0, 10)).toBe('2026-04-29');
    expect(batch.yieldAssessedOn?.toISOString().slice(0, 10)).toBe('2026-06-30');
    expect(batch.components).toMatchObject([{ treatmentRunId: stock.bathRun, grams: 10_000 }]);
    expect(batch.spawnShares).toMatchObject([{ spawnLotId: stock.oysterSpawn, grams: 1200 }]);
  });

  it('takes the lot at its own moisture when only the mass before treatment is known', async () => {
    const batch = await started(bags({ filledMass: null, moistureSource: 'none', moisturePercent: null }));
    expect(batch).toMatchObject({ dryMassFrom: 'mass_before_treatment', dryGrams: 8800, dryAssumed: false });
  });

  it('assumes the moisture of material and method after draining, and says so', async () => {
    const component = { ...bags().components[0], mass: null };
    const batch = await started(
      bags({ components: [component], moistureSource: 'assumed', moisturePercent: null }),
    );
    expect(batch.moisturePercent?.toNumber()).toBe(70);
    expect(batch).toMatchObject({ moistureSource: 'assumed', dryMassFrom: 'filled_mass', dryAssumed: true });
  });

  it('takes the spawn off a mass that was weighed with it and keeps what was typed', async () => {
    const batch = await started(
      bags({ filledMass: { text: '30.53', unit: 'kg' }, filledWith: 'with_spawn' }),
    );
    expect(batch.wetGrams).toBe(29_330);
    expect(batch.entered).toEqual({ filledMass: { text: '30.53', unit: 'kg' }, filledWith: 'with_spawn' });
  });

  it('is a mixed method when its parts were treated differently, and never mixes in additives', async () => {
    const [straw] = bags().components;
    const limed = { ...straw, treatment: `method:${stock.lime}` };
    const gypsum = { ...straw, treatment: `method:${stock.untreated}`, role: 'additive', mass: 300 };
    const mixed = await started(bags({ components: [straw, limed] }));
    expect(mixed).toMatchObject({ methodId: null, mixedMethod: true, mixedMaterial: false });
    const pure = await started(bags({ components: [straw, gypsum] }));
    expect(pure).toMatchObject({ methodId: stock.hotWater, mixedMethod: false });
  });

  it("shows the supplement within the dry mass, with its material's moisture assumed", async () => {
    const [straw] = bags().components;
    const bran = {
      lotId: stock.bran,
      treatment: `method:${stock.hotWater}`,
      role: 'supplement',
      mass: 1000,
      massStage: 'before_treatment',
    };
    const batch = await started(
      bags({ components: [straw, bran], filledMass: null, moistureSource: 'none', moisturePercent: null }),
    );
    expect(batch).toMatchObject({
      dryGrams: 9680,
      drySupplementGrams: 880,
      dryAssumed: true,
      mixedMaterial: false,
    });
  });

  it('is read from what a form posts, blank rows left out', async () => {
    const [straw] = bags().components;
    const blank = {
      lotId: '',
      treatment: '',
      role: 'substrate',
      mass: { text: '', unit: 'kg' },
      massStage: 'filled',
    };
    const batch = await started(
      bags({
        unitCount: '20',
        inoculatedOn: { quick: 'other', day: '1', month: 'April', year: '2026' },
        components: { '0': { ...straw, mass: { text: '10', unit: 'kg' } }, '1': blank },
        spawn: { '0': { lotId: stock.oysterSpawn, mass: { text: '1,2', unit: 'kg' } } },
        filledMass: { text: '64 lb 10.6 oz', unit: 'kg' },
        moisturePercent: '70 %',
      }),
    );
    expect(batch).toMatchObject({ unitCount: 20, spawnGrams: 1200, wetGrams: 29_330, dryGrams: 8799 });
  });
});

describe('a repeated start', () => {
  it('with the same id answers with the batch that is there', async () => {
    const id = newId();
    const first = await start(people.member, bags({ id }));
    expect(await start(people.member, bags({ id }))).toEqual(first);
    const count = await readAs(people.coordinator, ({ db }) => db.batch.count({ where: { id } }));
    expect(count).toBe(1);
  });

  it('with a code taken at a site one cannot see is refused by name', async () => {
    const straw = { ...bags().components[0], treatment: `method:${stock.hotWater}` };
    const there = bags({ siteId: people.quarry, code: 'KTR-7', components: [straw] });
    expect((await start(people.neighbour, there)).kind).toBe('ok');
    expect(await start(people.member, bags({ code: 'ktr 7' }))).toEqual({
      kind: 'invalid',
      errors: [{ field: 'code', code: 'code-taken', values: { code: 'KTR-7' } }],
    });
  });
});

describe('logs and beds', () => {
  const logs = (changes: object = {}) => ({
    ...twentyBags(people, stock),
    speciesId: stock.shiitake,
    containerKind: 'log',
    unitCount: 10,
    components: [
      {
        lotId: stock.logs,
        treatment: `method:${stock.untreated}`,
        role: 'substrate',
        mass: null,
        massStage: 'filled',
      },
    ],
    spawn: [{ lotId: stock.shiitakeSpawn, mass: null }],
    filledMass: null,
    moistureSource: 'none',
    moisturePercent: null,
    logWoodCode: 802,
    logDiameter: { text: '5', unit: 'in' },
    logLength: { text: '40', unit: 'in' },
    ...changes,
  });

  it('take ten white-oak logs of 5 by 40 inches as 76.51 kg dry', async () => {
    const batch = await started(logs());
    expect(batch).toMatchObject({
      dryMassFrom: 'log_size',
      dryGrams: 76_512,
      logDiameterMm: 127,
      logLengthMm: 1016,
    });
  });

  it('go by the green mass of a log rather than by its size', async () => {
    const batch = await started(logs({ logGreenMass: 13_079 }));
    expect(batch).toMatchObject({ dryMassFrom: 'log_green_mass', dryGrams: 76_512 });
  });

  it('leave the fields of other containers alone', async () => {
    const batch = await started(bags({ logWoodCode: 802, bedArea: { text: '4', unit: 'm2' } }));
    expect(batch).toMatchObject({ logWoodCode: null, bedAreaCm2: null });
  });

  it('refuse a bed of several units', async () => {
    expect(await start(people.member, bags({ containerKind: 'bed', unitCount: 2 }))).toMatchObject({
      errors: [{ field: 'unitCount', code: 'bed-is-one' }],
    });
  });
});
