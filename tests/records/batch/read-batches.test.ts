import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { batchesPerPage, listBatches } from '@/lib/records/batch/list-batches.query';
import { recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { find, lose, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

const now = { now: testDay };
const page = (id: string, actor: Actor = people.member) =>
  readAs(actor, (context) => getBatch(context, id, testDay));
const list = (raw: object = {}, actor: Actor = people.member) =>
  readAs(actor, (context) => listBatches(context, batchFilterInput.parse(raw), testDay));
const look = (batchId: string, lookedOn: string) =>
  runAs(people.member, recordLookInput, recordLook, { batchId, lookedOn }, now);
const weigh = (batchId: string, fresh: number, weighedOn: string) =>
  runAs(people.member, recordWeighingInput, recordWeighing, { weighedOn, fresh, lines: [{ batchId }] }, now);

describe('the page of a batch', () => {
  it('has 2 of 20 contaminated, 4.4 kg fresh and a BE of 50.0 % of 8.8 kg dry', async () => {
    const id = await startBags(people, stock);
    await find(people.member, id);
    await look(id, '2026-04-29');
    await weigh(id, 4_400, '2026-05-10');
    const read = await page(id);
    expect(read?.figures.contamination).toMatchObject({
      value: { kind: 'inspected', contaminatedByWindowEnd: 2, inoculatedUnits: 20 },
    });
    expect(read?.figures).toMatchObject({
      freshGrams: 4_400,
      days: { sinceInoculation: 49, toFirstHarvest: 39, toLastHarvest: 39 },
    });
    const be = read?.figures.be;
    expect(be?.kind === 'value' ? be.value.bePercent : be).toBeCloseTo(50.006, 3);
    expect(read?.next).toBe('weigh');
  });

  it('tells the story in the order of its days, voided entries struck and left out of the figures', async () => {
    const id = await startBags(people, stock);
    const finding = await find(people.member, id, { unitNumbers: '4, 9' });
    if (finding.kind !== 'ok') throw new Error(finding.kind);
    const followUp = { findingId: finding.value.id, doneOn: '2026-04-14', action: 'discarded', units: 1 };
    await runAs(people.member, recordFollowUpInput, recordFollowUp, followUp, now);
    const wrong = await find(people.member, id, { foundOn: '2026-04-08', units: 5, sign: 'black' });
    if (wrong.kind !== 'ok') throw new Error(wrong.kind);
    const voiding = { kind: 'finding', id: wrong.value.id, revision: 1, reason: 'Another batch' };
    await runAs(people.member, voidRecordInput, voidRecord, voiding);
    await lose(people.member, id);
    const read = await page(id);
    expect(read?.story.map(({ kind, on, voidReason }) => [kind, on, voidReason])).toEqual([
      ['inoculated', '2026-04-01', null],
      ['finding', '2026-04-08', 'Another batch'],
      ['finding', '2026-04-10', null],
      ['loss', '2026-04-12', null],
    ]);
    expect(read?.story[2]).toMatchObject({
      unitNumbers: [4, 9],
      followUps: [{ action: 'discarded', units: 1 }],
    });
    expect(read?.figures.units).toMatchObject({ contaminated: 2, lost: 1, live: 18 });
    expect(read?.names).toEqual({ [people.member.personId]: 'Ives Marrow' });
  });

  it('says why there is no BE: nothing weighed yet, picked but not weighed, no dry mass', async () => {
    const open = await startBags(people, stock);
    expect((await page(open))?.figures.be).toMatchObject({ reason: 'no-harvest-yet' });
    const closing = { closedOn: '2026-05-20', closeReason: 'finished', spentDestination: 'composted' };
    const close = (batchId: string, noHarvest: string) =>
      runAs(people.member, closeBatchInput, closeBatch, { batchId, ...closing, noHarvest }, now);
    await close(open, 'not_weighed');
    expect((await page(open))?.figures.be).toMatchObject({ reason: 'fresh-mass-missing' });
    const lost = await startBags(people, stock);
    await close(lost, 'none_picked');
    expect((await page(lost))?.figures.be).toMatchObject({ value: { bePercent: 0 } });
    const [straw] = [
      { lotId: stock.straw, treatment: `run:${stock.bathRun}`, role: 'substrate', massStage: 'filled' },
    ];
    const dry = await startBags(people, stock, {
      components: [straw],
      filledMass: null,
      moistureSource: 'none',
    });
    await weigh(dry, 400, '2026-05-10');
    expect((await page(dry))?.figures.be).toMatchObject({ reason: 'dry-mass-missing' });
  });

  it('asks for a look once the window has passed and nobody has looked', async () => {
    const id = await startBags(people, stock);
    const read = await page(id);
    expect(read?.figures.contamination).toMatchObject({ value: { kind: 'not-inspected' } });
    expect(read?.next).toBe('look');
  });

  it('is not there for another site, another network and a funder', async () => {
    const id = await startBags(people, stock);
    expect(await page(id, people.coordinator)).toBeDefined();
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect(await page(id, actor)).toBeUndefined();
  });
});

describe('the list of batches', () => {
  it('is filtered by what its address says', async () => {
    const id = await startBags(people, stock, { code: 'HHH-7', inoculatedOn: '2026-04-30' });
    const codes = async (raw: object) => (await list(raw)).batches.map(({ code }) => code);
    expect(await codes({ code: 'hhh 7' })).toEqual(['HHH-7']);
    expect(await codes({ code: 'hh', from: '2026-04-30', to: '2026-04-30' })).toEqual(['HHH-7']);
    expect(await codes({ code: 'HHH-7', species: stock.shiitake })).toEqual([]);
    expect(await codes({ code: 'HHH-7', method: stock.hotWater, container: 'bag', state: 'open' })).toEqual([
      'HHH-7',
    ]);
    expect(await codes({ code: 'HHH-7', method: 'mixed' })).toEqual([]);
    expect(await codes({ code: 'HHH-7', state: 'closed' })).toEqual([]);
    expect(await codes({ code: 'HHH-7', species: 'nonsense', from: '31 April' })).toEqual(['HHH-7']);
    const voiding = { kind: 'batch', id, revision: 1, reason: 'Twice' };
    await runAs(people.member, voidRecordInput, voidRecord, voiding);
    expect(await codes({ code: 'HHH-7' })).toEqual([]);
    expect(await codes({ code: 'HHH-7', voided: 'yes' })).toEqual(['HHH-7']);
  });

  it('pages to the oldest and back without a gap or a repeat', { timeout: 120_000 }, async () => {
    for (let count = (await list()).batches.length; count < batchesPerPage + 3; count += 1)
      await startBags(people, stock);
    const first = await list();
    expect(first.batches).toHaveLength(batchesPerPage);
    expect(first.newer).toBeUndefined();
    const second = await list({ after: first.older });
    expect(second.older).toBeUndefined();
    const ids = [...first.batches, ...second.batches].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const back = await list({ before: second.newer });
    expect(back.batches.map(({ id }) => id)).toEqual(first.batches.map(({ id }) => id));
    expect(back.newer).toBeUndefined();
    expect(back.older).toBe(first.older);
  });

  it('shows nothing of another site, another network, or to a funder', async () => {
    expect((await list({}, people.coordinator)).batches.length).toBeGreaterThan(0);
    for (const actor of [people.neighbour, people.stranger, people.funder])
      expect((await list({}, actor)).batches).toEqual([]);
  });
});
