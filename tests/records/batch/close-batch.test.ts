import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs, type WriteOptions, writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { reopenBatch } from '@/lib/records/batch/reopen-batch.command';
import { reopenBatchInput } from '@/lib/records/batch/reopen-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { asDate } from '@/lib/records/fields/stored-date';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

async function newBatch(): Promise<string> {
  const result = await runAs(people.member, startBatchInput, startBatch, twentyBags(people, stock), { now });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

function close(
  batchId: string,
  changes: object = {},
  options: WriteOptions = {},
  actor: Actor = people.member,
) {
  const raw = {
    batchId,
    closedOn: '2026-07-01',
    closeReason: 'finished',
    spentDestination: 'composted',
    ...changes,
  };
  return runAs(actor, closeBatchInput, closeBatch, raw, { now, ...options });
}

async function weigh(batchId: string, freshGrams: number, weighedOn = '2026-05-10') {
  const result = await writeAs(people.member, {}, async ({ db, actor }) => {
    const id = newId();
    const row = { networkId: actor.networkId, siteId: people.millLane };
    await db.weighing.create({
      data: { ...row, id, weighedOn: asDate(weighedOn), freshGrams, trimState: 'trimmed' },
    });
    await db.weighingLine.create({
      data: { ...row, id: newId(), weighingId: id, batchId, flush: 1, freshGrams },
    });
    return ok(undefined);
  });
  expect(result.kind).toBe('ok');
}

const stored = (id: string) =>
  readAs(people.member, ({ db }) => db.batch.findFirstOrThrow({ where: { id } }));

describe('closing a batch', () => {
  it('keeps the day, the reason and where the spent substrate went', async () => {
    const id = await newBatch();
    await weigh(id, 6_000);
    expect(await close(id)).toEqual({ kind: 'ok', value: { id } });
    expect(await stored(id)).toMatchObject({
      closedOn: asDate('2026-07-01'),
      closeReason: 'finished',
      spentDestination: 'composted',
      noHarvest: null,
    });
  });

  it('without a harvest asks whether none was picked or none weighed', async () => {
    const id = await newBatch();
    expect(await close(id)).toMatchObject({ errors: [{ field: 'noHarvest', code: 'missing-choice' }] });
    expect((await close(id, { noHarvest: 'none_picked' })).kind).toBe('ok');
    expect((await stored(id)).noHarvest).toBe('none_picked');
  });

  it.each([
    ['over 200 %', 20_000, 'be-high'],
    ['under 5 %', 300, 'be-low'],
  ])('asks about a biological efficiency %s of a finished oyster batch', async (_what, grams, code) => {
    const id = await newBatch();
    await weigh(id, grams);
    expect(await close(id)).toMatchObject({ kind: 'confirm', questions: [{ code }] });
    expect((await close(id, {}, { confirmed: new Set([code]) })).kind).toBe('ok');
  });

  it('does not ask about a low yield of a batch that was lost', async () => {
    const id = await newBatch();
    await weigh(id, 300);
    expect((await close(id, { closeReason: 'contaminated' })).kind).toBe('ok');
  });

  it.each([
    ['before inoculation', '2026-03-31', 'before-inoculation'],
    ['in the future', '2026-07-21', 'future-date'],
    ['before the last harvest', '2026-05-09', 'before'],
  ])('is refused %s', async (_what, closedOn, code) => {
    const id = await newBatch();
    await weigh(id, 6_000);
    expect(await close(id, { closedOn })).toMatchObject({ errors: [{ field: 'closedOn', code }] });
  });

  it('is refused when it is closed already, and not found elsewhere', async () => {
    const id = await newBatch();
    await weigh(id, 6_000);
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await close(id, {}, {}, actor)).toEqual({ kind: 'not-found' });
    await close(id);
    expect(await close(id)).toMatchObject({ errors: [{ code: 'closed' }] });
  });
});

describe('a closed batch', () => {
  const look = (batchId: string, lookedOn: string) =>
    runAs(people.member, recordLookInput, recordLook, { batchId, lookedOn }, { now });

  it('takes an entry that comes late but not one for a later day', async () => {
    const id = await newBatch();
    await close(id, { noHarvest: 'none_picked' });
    expect((await look(id, '2026-07-01')).kind).toBe('ok');
    expect(await look(id, '2026-07-02')).toMatchObject({
      errors: [{ field: 'lookedOn', code: 'after-closing' }],
    });
  });

  it('is reopened with a reason that the history keeps', async () => {
    const id = await newBatch();
    await close(id, { noHarvest: 'none_picked' });
    const raw = { id, revision: 2, reason: 'It fruited again' };
    const reopened = await runAs(people.member, reopenBatchInput, reopenBatch, raw, { reason: raw.reason });
    expect(reopened).toEqual({ kind: 'ok', value: { id } });
    expect(await stored(id)).toMatchObject({ closedOn: null, closeReason: null, noHarvest: null });
    const history = await historyOf(people.coordinator, id);
    expect(history.at(-1)).toMatchObject({
      reason: 'It fruited again',
      oldValues: { close_reason: 'finished' },
    });
    const again = await runAs(people.member, reopenBatchInput, reopenBatch, raw);
    expect(again).toEqual({ kind: 'conflict', current: 3 });
  });
});
