import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { batchUnits } from '@/lib/records/batch/batch-units';
import { correctLoss } from '@/lib/records/loss/correct-loss.command';
import { correctLossInput } from '@/lib/records/loss/loss.input';
import { find, lose, startBags, testDay } from '../../support/bags';
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

const units = () => readAs(people.member, (context) => batchUnits(context, { id: batchId, unitCount: 20 }));

describe('a loss', () => {
  it('is no contamination: the units stay among the inoculated', async () => {
    expect((await lose(people.member, batchId, { units: 3, unitNumbers: '1-3' })).kind).toBe('ok');
    expect(await units()).toMatchObject({ inoculated: 20, contaminated: 0, lost: 3, live: 17 });
  });

  it('leaves a unit contaminated that was contaminated before', async () => {
    await find(people.member, batchId, { units: 4 });
    await lose(people.member, batchId, { units: 3, contaminatedUnits: 2 });
    expect(await units()).toMatchObject({ contaminated: 4, lost: 3, live: 17, contaminatedStanding: 2 });
  });

  it.each([
    ['more units than stand', { units: 19 }, 'units', 'too-many-units'],
    [
      'more contaminated than were lost',
      { units: 1, contaminatedUnits: 2 },
      'contaminatedUnits',
      'more-than-lost',
    ],
    [
      'more contaminated than stand',
      { units: 5, contaminatedUnits: 4 },
      'contaminatedUnits',
      'more-than-contaminated',
    ],
    ['more clean units than there are', { units: 16 }, 'contaminatedUnits', 'fewer-than-contaminated'],
    ['a day before inoculation', { lostOn: '2026-03-31' }, 'lostOn', 'before-inoculation'],
    ['no cause', { cause: '' }, 'cause', 'missing-choice'],
    ['a number beyond the batch', { unitNumbers: '21' }, 'unitNumbers', 'unit-numbers'],
  ])('refuses %s', async (_what, changes, field, code) => {
    await find(people.member, batchId, { units: 2, action: 'discarded' });
    await find(people.member, batchId, { units: 3, sign: 'black' });
    expect(await lose(people.member, batchId, changes)).toMatchObject({ errors: [{ field, code }] });
  });

  it('sent twice with one id is kept once', async () => {
    const id = newId();
    await lose(people.member, batchId, { id });
    expect(await lose(people.member, batchId, { id })).toEqual({ kind: 'ok', value: { id, batchId } });
    expect(await units()).toMatchObject({ lost: 1 });
  });

  it('is not found at another site, in another network and for a funder', async () => {
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await lose(actor, batchId)).toEqual({ kind: 'not-found' });
  });

  it('is corrected with room for its own units; a stale correction meets a conflict', async () => {
    const made = await lose(people.member, batchId, { units: 20 });
    if (made.kind !== 'ok') throw new Error(made.kind);
    const raw = {
      id: made.value.id,
      revision: 1,
      reason: 'One stood',
      lostOn: '2026-04-12',
      units: 19,
      cause: 'eaten',
    };
    const correct = (actor: Actor) => runAs(actor, correctLossInput, correctLoss, raw, { now: testDay });
    expect(await correct(people.neighbour)).toEqual({ kind: 'not-found' });
    expect((await correct(people.member)).kind).toBe('ok');
    expect(await units()).toMatchObject({ lost: 19, live: 1 });
    expect(await correct(people.member)).toEqual({ kind: 'conflict', current: 2 });
  });
});
