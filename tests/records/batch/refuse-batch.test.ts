import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs, type WriteOptions } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
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

describe('what cannot be', () => {
  it.each([
    ['a day to come', { inoculatedOn: '2026-05-21' }, 'inoculatedOn', 'future-date'],
    ['no component', { components: [] }, 'components.0.lotId', 'missing-choice'],
    ['no number of units', { unitCount: '' }, 'unitCount', 'missing'],
    ['moisture of 100 %', { moisturePercent: '100' }, 'moisturePercent', 'moisture-hundred'],
    ['measured moisture without a figure', { moisturePercent: '' }, 'moisturePercent', 'missing'],
    ['30 t in one bag', { unitCount: 1, filledMass: 30_000_000 }, 'filledMass', 'impossible-per-unit'],
    ['a megabyte of note', { note: 'x'.repeat(1_000_000) }, 'note', 'too-long'],
    ['control characters', { note: 'a\u0007b' }, 'note', 'control-characters'],
    ['an unknown container', { containerKind: 'barrel' }, 'containerKind', 'not-an-option'],
    [
      'spawn weighed in but not weighed',
      { spawn: [], filledWith: 'with_spawn' },
      'filledMass',
      'spawn-mass-needed',
    ],
  ])('%s is refused at its field', async (_what, changes, field, code) => {
    expect(await start(people.member, bags(changes))).toMatchObject({
      kind: 'invalid',
      errors: [{ field, code }],
    });
  });

  it('a missing material is asked for together with everything else that is missing', async () => {
    expect(await start(people.member, bags({ components: [], unitCount: '', siteId: '' }))).toMatchObject({
      errors: expect.arrayContaining([
        { field: 'components.0.lotId', code: 'missing-choice' },
        { field: 'unitCount', code: 'missing' },
        { field: 'siteId', code: 'missing-choice' },
      ]),
    });
  });

  it('spawn of another species is refused', async () => {
    expect(
      await start(people.member, bags({ spawn: [{ lotId: stock.shiitakeSpawn, mass: 1 }] })),
    ).toMatchObject({
      errors: [{ field: 'spawn.0.lotId', code: 'spawn-other-species' }],
    });
  });

  it('a treatment that began after inoculation is refused', async () => {
    expect(await start(people.member, bags({ inoculatedOn: '2026-03-29' }))).toMatchObject({
      errors: [
        {
          field: 'components.0.treatment',
          code: 'treated-after-inoculation',
          values: { date: '2026-03-30' },
        },
      ],
    });
  });

  it('nothing of a refused batch is written', async () => {
    const id = newId();
    await start(people.member, bags({ id, spawn: [{ lotId: newId(), mass: 1 }] }));
    expect(await readAs(people.coordinator, ({ db }) => db.batch.count({ where: { id } }))).toBe(0);
  });
});

describe('what is unlikely', () => {
  const limed = () => ({
    speciesId: stock.shiitake,
    spawn: [{ lotId: stock.shiitakeSpawn, mass: 1200 }],
    components: [{ ...bags().components[0], treatment: `method:${stock.lime}` }],
  });

  it('is asked about: lime for a species that does not bear it, straw for shiitake', async () => {
    const result = await start(people.member, bags(limed()));
    const codes = result.kind === 'confirm' ? result.questions.map(({ code }) => code) : [];
    expect(codes).toContain('method-unsuited');
    expect(codes).toContain('material-unsuited');
  });

  it('is saved once the questions are answered', async () => {
    const confirmed = new Set(['method-unsuited', 'material-unsuited', 'material-method-unsuited']);
    expect((await start(people.member, bags(limed()), { confirmed })).kind).toBe('ok');
  });

  it.each([
    ['40 kg in a bag', { unitCount: 1, filledMass: 40_000 }, 'mass-per-unit-large'],
    ['a moisture of 20 %', { moisturePercent: 20 }, 'moisture-unusual'],
    ['a spawn rate of 90 %', { spawn: [{ lotId: 'oyster', mass: 26_000 }] }, 'spawn-rate-unusual'],
    ['a lot received later', { inoculatedOn: '2026-02-01', components: 'untreated' }, 'lot-received-later'],
  ])('%s is asked about', async (_what, changes: Record<string, unknown>, code) => {
    const raw = bags(changes);
    if (changes.spawn) raw.spawn = [{ lotId: stock.oysterSpawn, mass: 26_000 }];
    if (changes.components)
      raw.components = bags().components.map((one) => ({ ...one, treatment: `method:${stock.hotWater}` }));
    expect(await start(people.member, raw)).toMatchObject({ kind: 'confirm', questions: [{ code }] });
  });
});

describe('who may start a batch where', () => {
  it('a member of another site, a funder and another network find nothing there', async () => {
    for (const actor of [people.neighbour, people.funder, people.stranger])
      expect(await start(actor, bags())).toEqual({ kind: 'not-found' });
  });

  it('the coordinator may, in the name of a colleague of that site', async () => {
    const raw = bags({ startedById: people.member.personId });
    expect((await start(people.coordinator, raw)).kind).toBe('ok');
  });

  it('nobody may name a person who does not work there', async () => {
    const raw = bags({ startedById: people.neighbour.personId });
    expect(await start(people.member, raw)).toMatchObject({
      errors: [{ field: 'startedById', code: 'not-found' }],
    });
  });

  it('a spawn lot of another network is not found', async () => {
    const other = { siteId: people.saltbrookSite };
    expect(await start(people.stranger, bags(other))).toMatchObject({
      errors: [{ field: 'speciesId', code: 'not-found' }],
    });
  });
});
