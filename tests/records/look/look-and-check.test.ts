import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { correctCheckInput, recordCheckInput } from '@/lib/records/check/check.input';
import { correctCheck } from '@/lib/records/check/correct-check.command';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { correctLook } from '@/lib/records/look/correct-look.command';
import { correctLookInput } from '@/lib/records/look/correct-look.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { startBags, testDay } from '../../support/bags';
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

const look = (changes: object = {}, actor: Actor = people.member) =>
  runAs(
    actor,
    recordLookInput,
    recordLook,
    { batchId, lookedOn: '2026-04-11', ...changes },
    { now: testDay },
  );
const check = (changes: object = {}, actor: Actor = people.member, confirmed: string[] = []) =>
  runAs(
    actor,
    recordCheckInput,
    recordCheck,
    { batchId, kind: 'fully_colonised', checkedOn: '2026-04-20', ...changes },
    { now: testDay, confirmed: new Set(confirmed) },
  );

describe('a look', () => {
  it('needs nothing but its day', async () => {
    expect((await look()).kind).toBe('ok');
  });

  it.each([
    ['2026-03-31', 'before-inoculation'],
    ['2026-05-21', 'future-date'],
    ['', 'missing'],
    ['31 April', 'not-a-date'],
  ])('on %j is refused as %s', async (lookedOn, code) => {
    expect(await look({ lookedOn })).toMatchObject({ errors: [{ field: 'lookedOn', code }] });
  });

  it('sent twice with one id is kept once', async () => {
    const id = newId();
    await look({ id });
    expect(await look({ id })).toEqual({ kind: 'ok', value: { id, batchId } });
    expect(await readAs(people.member, ({ db }) => db.look.count({ where: { batchId } }))).toBe(1);
  });

  it('is corrected with a reason that the history keeps; a stale correction meets a conflict', async () => {
    const made = await look();
    if (made.kind !== 'ok') throw new Error(made.kind);
    const { id } = made.value;
    const raw = { id, revision: 1, reason: 'Day before', lookedOn: '2026-04-10' };
    const correct = (actor: Actor) =>
      runAs(actor, correctLookInput, correctLook, raw, { now: testDay, reason: raw.reason });
    expect(await correct(people.neighbour)).toEqual({ kind: 'not-found' });
    expect((await correct(people.member)).kind).toBe('ok');
    const history = await historyOf(people.coordinator, id);
    expect(history.at(-1)).toMatchObject({ oldValues: { looked_on: '2026-04-11' }, reason: 'Day before' });
    expect(await correct(people.member)).toEqual({ kind: 'conflict', current: 2 });
  });
});

describe('a check', () => {
  it('records full colonisation once and asks before it is recorded again', async () => {
    expect((await check()).kind).toBe('ok');
    expect(await check({ checkedOn: '2026-04-22' })).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'already-recorded', values: { date: '2026-04-20' } }],
    });
    expect((await check({ checkedOn: '2026-04-22' }, people.member, ['already-recorded'])).kind).toBe('ok');
  });

  it('records pins of every flush without asking', async () => {
    await check({ kind: 'pins_seen' });
    expect((await check({ kind: 'pins_seen', checkedOn: '2026-05-10' })).kind).toBe('ok');
  });

  it('is corrected; a stale correction meets a conflict', async () => {
    const made = await check();
    if (made.kind !== 'ok') throw new Error(made.kind);
    const raw = {
      id: made.value.id,
      revision: 1,
      reason: 'Pins',
      kind: 'pins_seen',
      checkedOn: '2026-04-20',
    };
    const correct = (actor: Actor) => runAs(actor, correctCheckInput, correctCheck, raw, { now: testDay });
    expect(await correct(people.stranger)).toEqual({ kind: 'not-found' });
    expect((await correct(people.member)).kind).toBe('ok');
    expect(await correct(people.member)).toEqual({ kind: 'conflict', current: 2 });
  });
});

it('looks and checks are not found at another site, in another network and for a funder', async () => {
  for (const actor of [people.neighbour, people.stranger, people.funder]) {
    expect(await look({}, actor)).toEqual({ kind: 'not-found' });
    expect(await check({}, actor)).toEqual({ kind: 'not-found' });
  }
});
