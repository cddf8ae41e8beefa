import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { endTrial } from '@/lib/records/trial/end-trial.command';
import { startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import { endTrialInput } from '@/lib/records/trial/trial.input';
import { getTrialResult } from '@/lib/report/trial/get-trial-result.query';
import { previewTrialResult } from '@/lib/report/trial/preview-trial-result.query';
import { publishTrialResult } from '@/lib/report/trial/publish-trial-result.command';
import { showTrialResult } from '@/lib/report/trial/show-trial-result.command';
import { trialResultInput } from '@/lib/report/trial/trial-result.input';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed, twentyBags } from '../support/shed';
import { startedTrial } from '../support/trials';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;
let trialId: string;

/** Every run made as drawn but the last: the bath loses 1 or 2 of 20 bags, lime 9 or 10. */
beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  const trial = await startedTrial(people, stock);
  trialId = trial.id;
  const as = { now, confirmed: new Set<string>(['already-recorded', 'trial-ends-early']) };
  for (const slot of trial.slots.slice(0, -1)) {
    const lime = slot.arm === 'lime soak';
    const base = twentyBags(people, stock);
    const raw = {
      ...base,
      components: base.components.map((one) => ({
        ...one,
        treatment: `method:${lime ? stock.lime : stock.hotWater}`,
      })),
      siteId: slot.siteId,
      inoculatedOn: slot.plannedOn,
      trialSlotId: slot.id,
    };
    const batch = await runAs(people.coordinator, startTrialBatchInput, startTrialBatch, raw, as);
    if (batch.kind !== 'ok') throw new Error(JSON.stringify(batch));
    const batchId = batch.value.id;
    const units = (lime ? 9 : 1) + (slot.place % 2);
    const finding = {
      batchId,
      foundOn: '2026-04-20',
      units,
      sign: 'green',
      stage: 'colonising',
      action: 'discarded',
    };
    for (const result of [
      await runAs(people.coordinator, recordFindingInput, recordFinding, finding, as),
      await runAs(people.coordinator, recordLookInput, recordLook, { batchId, lookedOn: '2026-06-20' }, as),
    ])
      if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  }
});
afterAll(() => admin.end());

const publish = () =>
  runAs(people.coordinator, trialResultInput, publishTrialResult, { id: trialId }, { now });
const resultFor = (actor: Growers['funder']) => readAs(actor, (context) => getTrialResult(context, trialId));

it('shows no outcome and publishes nothing while the trial runs', async () => {
  expect(
    await readAs(people.coordinator, (context) => previewTrialResult(context, trialId, now)),
  ).toBeUndefined();
  expect(await publish()).toMatchObject({ errors: [{ code: 'trial-not-ended' }] });
});

it('is published once ended, says what was found and made, and stays as it was', async () => {
  const end = { id: trialId, endNote: 'all but one are made' };
  const confirmed = new Set(['trial-ends-early']);
  await runAs(people.coordinator, endTrialInput, endTrial, end, { now, confirmed });
  expect(await publish()).toMatchObject({ kind: 'ok' });
  const result = await resultFor(people.member);
  expect(result?.content).toMatchObject({
    planned: 8,
    made: 7,
    departures: [],
    answer: { asDrawn: { contrasts: [{ verdict: 'more' }] } },
  });
  expect(JSON.stringify(result?.content)).not.toContain('Mill Lane');
  expect(await publish()).toMatchObject({ kind: 'ok' });
  expect(await resultFor(people.member)).toEqual(result);
  await expect(
    admin.query(`update trial_result set content = '{}' where trial_id = $1`, [trialId]),
  ).rejects.toMatchObject({ code: 'PB005' });
});

it('is for funders only when the coordinator says so, and never for another network', async () => {
  expect(await resultFor(people.funder)).toBeUndefined();
  await runAs(people.coordinator, trialResultInput, showTrialResult, { id: trialId }, { now });
  expect(await resultFor(people.funder)).toBeDefined();
  expect(await resultFor(people.stranger)).toBeUndefined();
});
