import { beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { listTrials } from '@/lib/records/trial/list-trials.query';
import { getVoidable } from '@/lib/records/void/get-voidable.query';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed } from '../../support/shed';
import { plannedTrial, startedTrial, trialDay } from '../../support/trials';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const discard = (id: string, revision: number) =>
  runAs(
    people.coordinator,
    voidRecordInput,
    voidRecord,
    { kind: 'trial', id, revision, reason: 'asked the wrong question' },
    { now: trialDay, reason: 'asked the wrong question' },
  );

describe('discarding a plan', () => {
  it('takes a draft off the list and keeps it in the history', async () => {
    const id = await plannedTrial(people, stock);
    expect(await discard(id, 1)).toEqual({ kind: 'ok', value: { id } });
    const listed = await readAs(people.coordinator, listTrials);
    expect(listed.map((trial) => trial.id)).not.toContain(id);
    const history = await historyOf(people.coordinator, id);
    expect(history.at(-1)?.reason).toBe('asked the wrong question');
  });

  it('is refused once the trial has started', async () => {
    const { id, revision } = await startedTrial(people, stock);
    expect(await readAs(people.coordinator, (context) => getVoidable(context, 'trial', id))).toBeUndefined();
    expect(await discard(id, revision)).toEqual({ kind: 'not-found' });
    const listed = await readAs(people.coordinator, listTrials);
    expect(listed.map((trial) => trial.id)).toContain(id);
  });
});
