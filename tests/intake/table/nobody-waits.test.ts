import { beforeAll, expect, it, vi } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid } from '@/lib/base/result';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';

vi.setConfig({ testTimeout: 60_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let batchId: string;

beforeAll(async () => {
  people = await growers(superuser);
  const raw = { ...twentyBags(people, await shed(people)), code: 'OLD-1' };
  const made = await runAs(people.member, startBatchInput, startBatch, raw, { now });
  if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  batchId = made.value.id;
});

it('a harvest is saved while a finding of its batch is still being tried by a check', async () => {
  const finding = {
    batchId,
    foundOn: '2026-04-20',
    units: 1,
    sign: 'green',
    stage: 'colonising',
    action: 'isolated',
  };
  const harvest = { weighedOn: '2026-06-02', fresh: 500, lines: [{ batchId }] };
  let saved: string | undefined;
  await writeAs(people.member, { now, longestMilliseconds: 30_000 }, async (context) => {
    const tried = await recordFinding(context, recordFindingInput.parse(finding));
    expect(tried.kind).toBe('ok');
    const result = await Promise.race([
      runAs(people.member, recordWeighingInput, recordWeighing, harvest, { now }),
      new Promise<{ kind: 'waited' }>((resolve) => setTimeout(() => resolve({ kind: 'waited' }), 4_000)),
    ]);
    saved = result.kind;
    return invalid('', 'rehearsed');
  });
  expect(saved).toBe('ok');
});
