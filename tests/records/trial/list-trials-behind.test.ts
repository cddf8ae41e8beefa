import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { assignSlot } from '@/lib/records/trial/assign-slot.command';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { getTrial } from '@/lib/records/trial/get-trial.query';
import { listTrialsBehind, type TrialBehind } from '@/lib/records/trial/list-trials-behind.query';
import { assignSlotInput, startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';
import { startedTrial } from '../../support/trials';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

async function behind(trial: TrialView, day: string, actor: Actor = people.coordinator) {
  const listed = await readAs(actor, (context) => listTrialsBehind(context, new Date(`${day}T18:00:00Z`)));
  return listed.find(({ id }) => id === trial.id) satisfies TrialBehind | undefined;
}

async function startFirstAtMill(trial: TrialView): Promise<string> {
  const slot = trial.slots.find(({ siteId }) => siteId === people.millLane);
  if (slot === undefined) throw new Error('nothing was drawn for Mill Lane');
  const base = twentyBags(people, stock);
  const methodId = slot.arm === 'lime soak' ? stock.lime : stock.hotWater;
  const components = base.components.map((one) => ({ ...one, treatment: `method:${methodId}` }));
  const raw = { ...base, components, inoculatedOn: '2026-04-02', trialSlotId: slot.id };
  const now = new Date('2026-04-02T18:00:00Z');
  const result = await runAs(people.member, startTrialBatchInput, startTrialBatch, raw, { now });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

/** A run of the first block that nobody can make any more. */
async function tellNotMade(trial: TrialView): Promise<void> {
  const view = await readAs(people.coordinator, (context) => getTrial(context, trial.id, new Date()));
  const slot = view?.slots.find(({ batch, plannedOn }) => batch === null && plannedOn === '2026-04-01');
  if (slot === undefined) throw new Error('every run was made');
  const raw = { id: slot.id, revision: slot.revision, departure: 'the water ran out', reason: '' };
  const told = await runAs(people.coordinator, assignSlotInput, assignSlot, raw);
  if (told.kind !== 'ok') throw new Error(JSON.stringify(told));
}

describe('a running trial', () => {
  it('is told once a day of its list and the days of grace are over, at the sites that the reader sees', async () => {
    const trial = await startedTrial(people, stock);
    expect(await behind(trial, '2026-04-08')).toBeUndefined();
    // The first block was planned for the 1st, with seven days of grace; the second for the 15th.
    expect(await behind(trial, '2026-04-09')).toMatchObject({ late: 4, unlooked: 0 });
    const own = await behind(trial, '2026-04-09', people.member);
    expect(own).toMatchObject({ late: 2, unlooked: 0 });
    await startFirstAtMill(trial);
    expect(await behind(trial, '2026-04-09')).toMatchObject({ late: 3 });
    await tellNotMade(trial);
    expect(await behind(trial, '2026-04-09')).toMatchObject({ late: 2 });
  });

  it('is told while a batch of it was not looked over since its window ended, and no longer', async () => {
    const trial = await startedTrial(people, stock);
    const batchId = await startFirstAtMill(trial);
    const day = '2026-06-20';
    const before = await behind(trial, day);
    expect(before).toMatchObject({ unlooked: 1 });
    const raw = { batchId, lookedOn: day };
    const options = { now: new Date(`${day}T18:00:00Z`) };
    expect(await runAs(people.member, recordLookInput, recordLook, raw, options)).toMatchObject({
      kind: 'ok',
    });
    expect(await behind(trial, day)).toMatchObject({ unlooked: 0 });
  });

  it('of yields misses no look', async () => {
    const changes = { outcome: 'yield', likeness: undefined, runSpreadPoints: '20', expectedPercent: '80' };
    const trial = await startedTrial(people, stock, changes);
    await startFirstAtMill(trial);
    expect(await behind(trial, '2026-06-20')).toMatchObject({ unlooked: 0 });
  });
});
