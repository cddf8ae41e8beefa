import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { assignSlot } from '@/lib/records/trial/assign-slot.command';
import { endTrial } from '@/lib/records/trial/end-trial.command';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { listNextRuns } from '@/lib/records/trial/list-next-runs.query';
import { assignSlotInput, startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import { endTrialInput } from '@/lib/records/trial/trial.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';
import { startedTrial, trialNow } from '../../support/trials';

const { superuser } = await testDatabase();
const now = new Date('2026-06-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const bags = (arm: string, changes: object = {}) => {
  const base = twentyBags(people, stock);
  const methodId = arm === 'lime soak' ? stock.lime : stock.hotWater;
  const components = base.components.map((one) => ({ ...one, treatment: `method:${methodId}` }));
  return { ...base, components, inoculatedOn: '2026-04-02', ...changes };
};
const atMill = (trial: TrialView) => trial.slots.filter(({ siteId }) => siteId === people.millLane);
const firstAtMill = (trial: TrialView) => {
  const [slot] = atMill(trial);
  if (slot === undefined) throw new Error('nothing was drawn for Mill Lane');
  return slot;
};
const fill = (slotId: string, raw: object, confirmed: string[] = [], actor: Actor = people.member) =>
  runAs(
    actor,
    startTrialBatchInput,
    startTrialBatch,
    { ...raw, trialSlotId: slotId },
    {
      now,
      confirmed: new Set(confirmed),
    },
  );
const assign = (raw: object, confirmed: string[] = [], actor: Actor = people.member) =>
  runAs(actor, assignSlotInput, assignSlot, raw, { now, confirmed: new Set(confirmed) });
async function batch(raw: object): Promise<string> {
  const result = await runAs(people.member, startBatchInput, startBatch, raw, { now });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

describe('a batch started for a run of a trial', () => {
  it('stands in the list at once, as drawn', async () => {
    const trial = await startedTrial(people, stock);
    const slot = firstAtMill(trial);
    expect(await fill(slot.id, bags(slot.arm))).toMatchObject({ kind: 'ok' });
    const filled = firstAtMill(await trialNow(people, trial.id, now));
    expect(filled).toMatchObject({ batch: { inoculatedOn: '2026-04-02' }, departures: [], missing: false });
  });

  it('treated otherwise is asked about, saves nothing until confirmed, and stays in the drawn arm', async () => {
    const trial = await startedTrial(people, stock);
    const slot = firstAtMill(trial);
    const other = slot.arm === 'lime soak' ? 'hot-water bath' : 'lime soak';
    const before = await readAs(people.member, ({ db }) => db.batch.count());
    expect(await fill(slot.id, bags(other))).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'trial-other-treatment', values: { arm: slot.arm } }],
    });
    expect(await readAs(people.member, ({ db }) => db.batch.count())).toBe(before);
    expect(await fill(slot.id, bags(other), ['trial-other-treatment'])).toMatchObject({ kind: 'ok' });
    expect(firstAtMill(await trialNow(people, trial.id, now))).toMatchObject({
      armId: slot.armId,
      departures: ['other-treatment'],
    });
  });

  it('at another site than the one drawn is refused', async () => {
    const trial = await startedTrial(people, stock);
    const raw = bags(firstAtMill(trial).arm, { siteId: people.quarry });
    expect(await fill(firstAtMill(trial).id, raw, [], people.coordinator)).toMatchObject({
      errors: [{ field: 'siteId', code: 'trial-other-site' }],
    });
  });
});

describe('naming a batch afterwards', () => {
  it('refuses a batch older than the list, and one that stands in it already', async () => {
    const trial = await startedTrial(people, stock);
    const [first, second] = atMill(trial);
    const old = await batch(bags(first?.arm ?? '', { inoculatedOn: '2026-03-31' }));
    expect(await assign({ id: first?.id, revision: 1, batchId: old })).toMatchObject({
      errors: [{ field: 'batchId', code: 'trial-batch-before', values: { date: '2026-04-01' } }],
    });
    const young = await batch(bags(first?.arm ?? ''));
    expect(await assign({ id: first?.id, revision: 1, batchId: young })).toMatchObject({ kind: 'ok' });
    expect(
      await assign({ id: second?.id, revision: 1, batchId: young }, ['trial-other-treatment']),
    ).toMatchObject({ errors: [{ field: 'batchId', code: 'trial-batch-taken' }] });
  });

  it('needs a reason to put another batch in its place, and notices a stale form', async () => {
    const trial = await startedTrial(people, stock);
    const slot = firstAtMill(trial);
    const [one, two] = [await batch(bags(slot.arm)), await batch(bags(slot.arm))];
    expect(await assign({ id: slot.id, revision: 1, batchId: one })).toMatchObject({ kind: 'ok' });
    const swap = { id: slot.id, batchId: two };
    expect(await assign({ ...swap, revision: 2 })).toMatchObject({ errors: [{ field: 'reason' }] });
    const reason = 'the wrong bags were named';
    expect(await assign({ ...swap, revision: 1, reason })).toMatchObject({ kind: 'conflict', current: 2 });
    expect(await assign({ ...swap, revision: 2, reason })).toMatchObject({ kind: 'ok' });
  });

  it('tells late, out of order, another size and what somebody wrote down', async () => {
    const trial = await startedTrial(people, stock);
    const [, second] = atMill(trial);
    const late = await batch(
      bags(second?.arm ?? '', { inoculatedOn: '2026-04-20', unitCount: 10, filledMass: 15_000 }),
    );
    const told = { id: second?.id, revision: 1, batchId: late, departure: 'half the load was lost' };
    expect(await assign(told)).toMatchObject({ kind: 'ok' });
    const view = atMill(await trialNow(people, trial.id, now));
    expect(view[1]).toMatchObject({ departures: ['other-size', 'late', 'out-of-order', 'told'] });
    expect(view[0]).toMatchObject({ missing: true, next: true });
  });

  it('is not for a member of another site, and not after the end', async () => {
    const trial = await startedTrial(people, stock);
    const slot = firstAtMill(trial);
    const raw = { id: slot.id, revision: 1, departure: 'no water' };
    expect(await assign(raw, [], people.neighbour)).toMatchObject({ kind: 'not-found' });
    const end = { id: trial.id, endNote: 'enough' };
    expect(await runAs(people.coordinator, endTrialInput, endTrial, end, { now })).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'trial-ends-early', values: { count: 8 } }],
    });
    expect(
      await runAs(people.coordinator, endTrialInput, endTrial, end, {
        now,
        confirmed: new Set(['trial-ends-early']),
      }),
    ).toMatchObject({ kind: 'ok' });
    expect(await assign(raw)).toMatchObject({ errors: [{ code: 'trial-ended' }] });
  });
});

it('tells a member what is drawn next at their site, and the following run once that is made', async () => {
  const trial = await startedTrial(people, stock);
  const next = async () =>
    (await readAs(people.member, listNextRuns)).find(({ trialId }) => trialId === trial.id)?.slotId;
  const [first, second] = atMill(trial);
  expect(await next()).toBe(first?.id);
  await fill(first?.id ?? '', bags(first?.arm ?? ''));
  expect(await next()).toBe(second?.id);
});
