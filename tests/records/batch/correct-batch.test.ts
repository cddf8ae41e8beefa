import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-05-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

async function newBatch(): Promise<string> {
  const result = await runAs(people.member, startBatchInput, startBatch, twentyBags(people, stock), { now });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

function correct(actor: Actor, id: string, changes: object, revision = 1) {
  const reason = 'The scale was read wrong';
  const raw = { ...twentyBags(people, stock), id, revision, reason, ...changes };
  return runAs(actor, correctBatchInput, correctBatch, raw, { now, reason });
}

const find = (batchId: string, units: number) =>
  runAs(
    people.member,
    recordFindingInput,
    recordFinding,
    { batchId, foundOn: '2026-04-10', units, sign: 'green', stage: 'colonising', action: 'isolated' },
    { now },
  );

describe('a corrected batch', () => {
  it('is worked out anew; the old figures and the reason stay in the history', async () => {
    const id = await newBatch();
    expect(await correct(people.member, id, { filledMass: 30_000, moisturePercent: 68 })).toEqual({
      kind: 'ok',
      value: { id },
    });
    const batch = await readAs(people.member, ({ db }) => db.batch.findFirstOrThrow({ where: { id } }));
    expect(batch).toMatchObject({ dryGrams: 9_600, revision: 2 });
    const history = await historyOf(people.coordinator, id);
    expect(history).toMatchObject([
      { action: 'created' },
      { action: 'changed', reason: 'The scale was read wrong', oldValues: { dry_grams: 8_799 } },
    ]);
  });

  it('keeps its replaced parts, voided with the reason', async () => {
    const id = await newBatch();
    const [straw] = twentyBags(people, stock).components;
    await correct(people.member, id, { components: [{ ...straw, treatment: `method:${stock.steam}` }] });
    const parts = await readAs(people.member, ({ db }) =>
      db.batchComponent.findMany({ where: { batchId: id }, orderBy: { id: 'asc' } }),
    );
    expect(parts).toMatchObject([
      { methodId: stock.hotWater, voidReason: 'The scale was read wrong' },
      { methodId: stock.steam, voidedAt: null },
    ]);
    const batch = await readAs(people.member, ({ db }) => db.batch.findFirstOrThrow({ where: { id } }));
    expect(batch.methodId).toBe(stock.steam);
  });

  it('moves with its parts and findings when the site was wrong', async () => {
    const id = await newBatch();
    await find(id, 2);
    const [straw] = twentyBags(people, stock).components;
    const components = [{ ...straw, treatment: `method:${stock.hotWater}` }];
    const moved = await correct(people.coordinator, id, { siteId: people.quarry, components });
    expect(moved.kind).toBe('ok');
    const seen = await readAs(people.neighbour, ({ db }) => db.finding.count({ where: { batchId: id } }));
    expect(seen).toBe(1);
  });
});

describe('a correction is refused', () => {
  it('without a reason', async () => {
    const id = await newBatch();
    expect(await correct(people.member, id, { reason: ' ' })).toMatchObject({
      errors: [{ field: 'reason', code: 'missing' }],
    });
  });

  it('with fewer units than were found contaminated', async () => {
    const id = await newBatch();
    await find(id, 6);
    expect(await correct(people.member, id, { unitCount: 5 })).toMatchObject({
      errors: [{ field: 'unitCount', code: 'fewer-than-recorded', values: { least: 6 } }],
    });
  });

  it('with an inoculation after the first record', async () => {
    const id = await newBatch();
    await find(id, 1);
    expect(await correct(people.member, id, { inoculatedOn: '2026-04-11' })).toMatchObject({
      errors: [{ field: 'inoculatedOn', code: 'after-first-record', values: { date: '2026-04-10' } }],
    });
  });

  it('when somebody else changed the batch in the meantime', async () => {
    const id = await newBatch();
    await correct(people.coordinator, id, { note: 'First' });
    expect(await correct(people.member, id, { note: 'Second' })).toEqual({ kind: 'conflict', current: 2 });
  });

  it('as not found at another site, in another network and for a funder', async () => {
    const id = await newBatch();
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await correct(actor, id, {})).toEqual({ kind: 'not-found' });
  });
});
