import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { correctFinding } from '@/lib/records/finding/correct-finding.command';
import { correctFindingInput } from '@/lib/records/finding/finding.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { find, lose, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed } from '../../support/shed';

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

async function found(changes: object = {}): Promise<string> {
  const result = await find(people.member, batchId, changes);
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

function correct(actor: Actor, id: string, changes: object = {}, revision = 1) {
  const usual = { foundOn: '2026-04-10', units: 2, sign: 'green', stage: 'colonising', action: 'isolated' };
  const reason = 'Counted again';
  return runAs(
    actor,
    correctFindingInput,
    correctFinding,
    { id, revision, reason, ...usual, ...changes },
    { now: testDay, reason },
  );
}

const total = () =>
  readAs(people.member, async ({ db }) => {
    const { _sum } = await db.finding.aggregate({
      where: { batchId, voidedAt: null },
      _sum: { units: true },
    });
    return _sum.units;
  });

describe('a finding', () => {
  it('counts units newly contaminated and may name them', async () => {
    const id = await found({ unitNumbers: '3, 7' });
    const units = await readAs(people.member, ({ db }) =>
      db.findingUnit.findMany({ where: { findingId: id }, orderBy: { unitNumber: 'asc' } }),
    );
    expect(units.map(({ unitNumber }) => unitNumber)).toEqual([3, 7]);
    expect(await total()).toBe(2);
  });

  it('never reports more than inoculated less those found before', async () => {
    await found({ units: 15 });
    expect(await find(people.member, batchId, { units: 6 })).toMatchObject({
      errors: [{ field: 'units', code: 'too-many-units', values: { units: 6, available: 5 } }],
    });
    await found({ units: 5 });
    expect(await find(people.member, batchId, { units: 1 })).toMatchObject({
      errors: [{ values: { available: 0 } }],
    });
  });

  it('leaves out units lost clean, but not those lost after they were found', async () => {
    await found({ units: 4 });
    await lose(people.member, batchId, { units: 6, contaminatedUnits: 2 });
    expect(await find(people.member, batchId, { units: 13 })).toMatchObject({
      errors: [{ values: { available: 12 } }],
    });
    expect((await find(people.member, batchId, { units: 12 })).kind).toBe('ok');
  });

  it('cannot take the last units twice when two phones send at once', async () => {
    await found({ units: 18 });
    const both = await Promise.all([
      find(people.member, batchId, { sign: 'black' }),
      find(people.coordinator, batchId, { sign: 'yellow' }),
    ]);
    expect(both.map(({ kind }) => kind).sort()).toEqual(['invalid', 'ok']);
    expect(await total()).toBe(20);
  });

  it.each([
    ['a number beyond the batch', '21', 'unit-numbers'],
    ['more numbers than units', '1-3', 'more-numbers-than-units'],
    ['a number named before', '5', 'unit-named-before'],
    ['a number twice', '4,4', 'duplicate-units'],
  ])('refuses %s', async (_what, unitNumbers, code) => {
    await found({ units: 1, unitNumbers: '5' });
    expect(await find(people.member, batchId, { unitNumbers })).toMatchObject({
      errors: [{ field: 'unitNumbers', code }],
    });
  });

  it.each([
    ['before inoculation', { foundOn: '2026-03-31' }, 'before-inoculation'],
    ['in the future', { foundOn: '2026-05-21' }, 'future-date'],
    ['without a sign', { sign: '' }, 'missing-choice'],
    ['without units', { units: '' }, 'missing'],
    ['with half a unit', { units: '1.5' }, 'not-whole'],
  ])('is refused %s', async (_what, changes, code) => {
    expect(await find(people.member, batchId, changes)).toMatchObject({ errors: [{ code }] });
  });

  it('sent twice with one id is kept once', async () => {
    const id = newId();
    await find(people.member, batchId, { id });
    expect(await find(people.member, batchId, { id })).toEqual({ kind: 'ok', value: { id, batchId } });
    expect(await total()).toBe(2);
  });

  it('that repeats another one of the day is asked about', async () => {
    await found();
    expect(await find(people.member, batchId)).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'already-recorded' }],
    });
    const confirmed = new Set(['already-recorded']);
    expect((await find(people.member, batchId, {}, { confirmed })).kind).toBe('ok');
  });

  it('is not found at another site, in another network and for a funder', async () => {
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await find(actor, batchId)).toEqual({ kind: 'not-found' });
  });
});

describe('a corrected finding', () => {
  it('replaces count and unit names; the history keeps the old count and the reason', async () => {
    const id = await found({ unitNumbers: '3, 7' });
    expect((await correct(people.member, id, { units: 3, unitNumbers: '3, 8, 9' })).kind).toBe('ok');
    expect(await total()).toBe(3);
    const history = await historyOf(people.coordinator, id);
    expect(history.at(-1)).toMatchObject({
      oldValues: { units: 2 },
      newValues: { units: 3 },
      reason: 'Counted again',
    });
    const named = await readAs(people.member, ({ db }) =>
      db.findingUnit.findMany({ where: { findingId: id, voidedAt: null }, orderBy: { unitNumber: 'asc' } }),
    );
    expect(named.map(({ unitNumber }) => unitNumber)).toEqual([3, 8, 9]);
  });

  it('has room for its own units and no more', async () => {
    await found({ units: 10, sign: 'black' });
    const id = await found({ units: 10 });
    expect((await correct(people.member, id, { units: 10, note: 'All' })).kind).toBe('ok');
    expect(await correct(people.member, id, { units: 11 }, 2)).toMatchObject({
      errors: [{ code: 'too-many-units' }],
    });
  });

  it('meets a conflict, and is not found elsewhere', async () => {
    const id = await found();
    await correct(people.coordinator, id, { units: 1 });
    expect(await correct(people.member, id, { units: 3 })).toEqual({ kind: 'conflict', current: 2 });
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await correct(actor, id)).toEqual({ kind: 'not-found' });
  });
});

describe('a voided finding', () => {
  it('gives its units and their numbers free again', async () => {
    const id = await found({ units: 20, unitNumbers: '1-20' });
    const raw = { kind: 'finding', id, revision: 1, reason: 'Wrong batch' };
    expect((await runAs(people.member, voidRecordInput, voidRecord, raw)).kind).toBe('ok');
    expect((await find(people.member, batchId, { units: 1, unitNumbers: '7' })).kind).toBe('ok');
  });
});
