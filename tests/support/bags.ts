import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import type { WriteOptions } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import type { Growers } from './growers';
import { type Shed, twentyBags } from './shed';

/** The day on which the tests of batches are set. */
export const testDay = new Date('2026-05-20T15:00:00Z');

/** Starts the twenty bags of 2026-04-01 as the member of Mill Lane; answers the batch's id. */
export async function startBags(people: Growers, stock: Shed, changes: object = {}): Promise<string> {
  const raw = { ...twentyBags(people, stock), ...changes };
  const result = await runAs(people.member, startBatchInput, startBatch, raw, { now: testDay });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

/** Two green bags found on 2026-04-10 and isolated, unless said otherwise. */
export function find(actor: Actor, batchId: string, changes: object = {}, options: WriteOptions = {}) {
  const usual = { foundOn: '2026-04-10', units: 2, sign: 'green', stage: 'colonising', action: 'isolated' };
  return runAs(
    actor,
    recordFindingInput,
    recordFinding,
    { batchId, ...usual, ...changes },
    { now: testDay, ...options },
  );
}

/** One bag dried out on 2026-04-12, unless said otherwise. */
export function lose(actor: Actor, batchId: string, changes: object = {}, options: WriteOptions = {}) {
  const usual = { lostOn: '2026-04-12', units: 1, cause: 'dried_out' };
  return runAs(
    actor,
    recordLossInput,
    recordLoss,
    { batchId, ...usual, ...changes },
    { now: testDay, ...options },
  );
}
