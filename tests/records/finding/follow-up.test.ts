import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { batchUnits } from '@/lib/records/batch/batch-units';
import { correctFollowUp } from '@/lib/records/finding/correct-follow-up.command';
import { correctFollowUpInput, recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { find, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let batchId: string;
let findingId: string;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});
beforeEach(async () => {
  batchId = await startBags(people, stock);
  const finding = await find(people.member, batchId, { units: 5 });
  if (finding.kind !== 'ok') throw new Error(finding.kind);
  findingId = finding.value.id;
});

function follow(changes: object = {}, actor: Actor = people.member) {
  const raw = { findingId, doneOn: '2026-04-14', action: 'discarded', units: 2, ...changes };
  return runAs(actor, recordFollowUpInput, recordFollowUp, raw, { now: testDay });
}

const units = () => readAs(people.member, (context) => batchUnits(context, { id: batchId, unitCount: 20 }));

describe('a follow-up', () => {
  it('takes units out of the shed and never changes how many were contaminated', async () => {
    expect(await units()).toMatchObject({ contaminated: 5, live: 20, contaminatedStanding: 5 });
    expect((await follow()).kind).toBe('ok');
    expect(await units()).toMatchObject({ contaminated: 5, live: 18, contaminatedStanding: 3 });
  });

  it.each([
    ['before its finding', { doneOn: '2026-04-09' }, 'doneOn', 'before'],
    ['in the future', { doneOn: '2026-05-21' }, 'doneOn', 'future-date'],
    ['for more units than were found', { units: 6 }, 'units', 'more-than-found'],
    ['without an action', { action: '' }, 'action', 'missing-choice'],
  ])('is refused %s', async (_what, changes, field, code) => {
    expect(await follow(changes)).toMatchObject({ errors: [{ field, code }] });
  });

  it('sent twice with one id is kept once', async () => {
    const id = newId();
    await follow({ id });
    expect(await follow({ id })).toEqual({ kind: 'ok', value: { id, batchId } });
    expect(await units()).toMatchObject({ live: 18 });
  });

  it('is not found at another site, in another network and for a funder', async () => {
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await follow({}, actor)).toEqual({ kind: 'not-found' });
  });

  it('is corrected with its revision, and a stale one meets a conflict', async () => {
    const made = await follow();
    if (made.kind !== 'ok') throw new Error(made.kind);
    const raw = {
      id: made.value.id,
      revision: 1,
      reason: 'Three',
      doneOn: '2026-04-14',
      action: 'buried',
      units: 3,
    };
    const correct = (actor: Actor) =>
      runAs(actor, correctFollowUpInput, correctFollowUp, raw, { now: testDay });
    expect(await correct(people.neighbour)).toEqual({ kind: 'not-found' });
    expect((await correct(people.member)).kind).toBe('ok');
    expect(await units()).toMatchObject({ contaminated: 5, live: 17 });
    expect(await correct(people.member)).toEqual({ kind: 'conflict', current: 2 });
  });
});
