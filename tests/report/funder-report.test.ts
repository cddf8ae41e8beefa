import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { z } from 'zod';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { discardDraft } from '@/lib/report/discard-draft.command';
import { getReport } from '@/lib/report/get-report.query';
import { previewChanges } from '@/lib/report/preview-changes.query';
import { publishReport } from '@/lib/report/publish-report.command';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { writeWords } from '@/lib/report/write-words.command';
import { writeWordsInput } from '@/lib/report/write-words.input';
import { testDatabase } from '../support/database';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed, twentyBags } from '../support/shed';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
let clock = Date.parse('2026-07-20T15:00:00Z');
const batches: { siteId: string; batchId: string }[] = [];

/** Runs a command as the coordinator, a minute after the last one. */
async function run<S extends z.ZodType, T>(schema: S, command: Command<z.output<S>, T>, raw: unknown) {
  clock += 60_000;
  const confirmed = new Set<string>(['already-recorded', 'same-day', 'large']);
  return runAs(people.coordinator, schema, command, raw, {
    now: new Date(clock),
    confirmed,
    reason: 'tried',
  });
}

async function done<S extends z.ZodType, T>(schema: S, command: Command<z.output<S>, T>, raw: unknown) {
  const result = await run(schema, command, raw);
  if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
  return result.value;
}

const weigh = (batch: { siteId: string; batchId: string }, grams: number, on: string) =>
  done(recordWeighingInput, recordWeighing, {
    weighedOn: on,
    fresh: grams,
    lines: [{ batchId: batch.batchId, flush: 1 }],
    sold: grams,
  });

const spring = { title: 'Spring', from: '2026-04-01', to: '2026-06-30', indicators: ['harvest', 'protein'] };
const build = (more: object = {}) => done(buildReportInput, buildReport, { ...spring, ...more });
const publish = (id: string) => done(publishReportInput, publishReport, { id });
const read = async (id: string, as = people.coordinator) => {
  const report = await readAs(as, (context) => getReport(context, id));
  if (!report) throw new Error('no such report');
  return report;
};

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  const { networkId } = people.coordinator;
  const sites = [people.millLane, people.quarry];
  for (const name of ['Orchard', 'Weir', 'Chapel', 'Station', 'Hill']) {
    const id = randomUUID();
    await admin.query(
      `insert into site (network_id, id, code, name, kind, time_zone) values ($1, $2, $3, $4, 'farm', 'America/New_York')`,
      [networkId, id, name.slice(0, 3).toUpperCase(), name],
    );
    sites.push(id);
  }
  for (const siteId of sites) {
    const base = twentyBags(people, stock);
    const components = base.components.map((one) => ({ ...one, treatment: `method:${stock.hotWater}` }));
    const { id: batchId } = await done(startBatchInput, startBatch, { ...base, components, siteId });
    const batch = { siteId, batchId };
    batches.push(batch);
    await weigh(batch, 3_000, '2026-05-04');
  }
});
afterAll(() => admin.end());

it('is read by the funder once it is published, and cannot be changed from then on', async () => {
  const { id } = await build();
  expect(await readAs(people.funder, (context) => getReport(context, id))).toBeUndefined();
  await publish(id);
  expect((await read(id, people.funder)).content.harvest.total).toMatchObject({ amount: 21_000, sites: 7 });
  const { revision } = await read(id);
  const typed = { id, revision, title: 'Another', words: {} };
  expect(await run(writeWordsInput, writeWords, typed)).toMatchObject({ kind: 'not-found' });
  expect(await run(publishReportInput, discardDraft, { id })).toMatchObject({ kind: 'not-found' });
  await expect(
    admin.query(`update report set content = content || '{"sitesActive": 99}' where id = $1`, [id]),
  ).rejects.toThrow('a published report is fixed');
});

it('takes the words of a draft and nothing else from whoever writes them', async () => {
  const { id } = await build();
  const { revision, content } = await read(id);
  const words = { opening: 'A wet spring.', harvest: '999 kg!' };
  await done(writeWordsInput, writeWords, { id, revision, title: 'Wet spring', words, content: {} });
  const written = await read(id);
  expect(written).toMatchObject({ title: 'Wet spring', words });
  expect(written.content).toEqual(content);
  expect(await run(writeWordsInput, writeWords, { id, revision, title: 'Late', words: {} })).toMatchObject({
    kind: 'conflict',
  });
  await done(publishReportInput, discardDraft, { id });
  expect(await readAs(people.coordinator, (context) => getReport(context, id))).toBeUndefined();
});

it('tells a baseline without records as no baseline, never as an infinite change', async () => {
  const { id } = await build({ baselineFrom: '2025-01-01', baselineTo: '2025-03-31' });
  expect((await read(id)).content.changes).toMatchObject([
    { key: 'harvest', before: { amount: 0 }, now: { amount: 21_000 }, change: { kind: 'no-baseline' } },
  ]);
  const overlapping = { ...spring, baselineFrom: '2026-01-01', baselineTo: '2026-04-02' };
  expect(await run(buildReportInput, buildReport, overlapping)).toMatchObject({
    kind: 'invalid',
    errors: [{ field: 'baselineTo', code: 'baseline-before' }],
  });
  expect(await run(buildReportInput, buildReport, { ...spring, indicators: [] })).toMatchObject({
    kind: 'invalid',
  });
});

it('keeps what a later version would tell of one site as it was, and says where the coordinator finds it', async () => {
  const first = await build({ to: '2026-06-29' });
  await publish(first.id);
  const [millLane] = batches;
  if (!millLane) throw new Error('no batch');
  await weigh(millLane, 500, '2026-06-01');
  const changes = await readAs(people.coordinator, (context) =>
    previewChanges(context, first.id, new Date(clock)),
  );
  expect(changes?.sums).toEqual([{ part: 'harvest', siteId: people.millLane, earlier: 3_000, now: 3_500 }]);
  expect(changes?.content.harvest.total).toMatchObject({ amount: 21_500 });
  const second = await done(reviseReportInput, reviseReport, { id: first.id });
  const kept = await read(second.id);
  expect(kept).toMatchObject({ version: 2, earlier: { id: first.id, version: 1 } });
  expect(kept.content.carried).toMatchObject({ harvest: 1, protein: 1 });
  expect(kept.content.harvest).toEqual((await read(first.id)).content.harvest);
  await publish(second.id);
  for (const batch of batches.slice(1)) await weigh(batch, 400, '2026-06-02');
  const third = await done(reviseReportInput, reviseReport, { id: second.id });
  const told = await read(third.id);
  expect(told.content.carried).toEqual({});
  expect(told.content.harvest.total).toMatchObject({ amount: 23_900, sites: 7 });
});

it('is not published beside one published since that would tell of one site', async () => {
  const period = { to: '2026-06-28' };
  const early = await build(period);
  const [millLane] = batches;
  if (!millLane) throw new Error('no batch');
  await weigh(millLane, 700, '2026-06-03');
  await publish((await build(period)).id);
  expect(await run(publishReportInput, publishReport, { id: early.id })).toMatchObject({
    kind: 'invalid',
    errors: [{ code: 'report-built-before' }],
  });
  const late = await build(period);
  await publish(late.id);
  expect((await read(late.id)).publishedAt).toBeDefined();
});

it('keeps the sums of sales only where it tells them', async () => {
  const kept = async (indicators: string[]) => {
    const { id } = await build({ to: '2026-06-27', indicators });
    const { rows } = await admin.query('select ground from report_ground where id = $1', [id]);
    return Object.keys(rows[0].ground);
  };
  expect(await kept(['harvest'])).not.toContain('sales');
  expect(await kept(['harvest', 'sales'])).toContain('sales');
});

it('tells last year’s harvest as readers have it, whoever corrected it since, and the other way round', async () => {
  const [millLane, quarry] = batches;
  if (!millLane || !quarry) throw new Error('no batch');
  const days = { from: '2026-05-01', to: '2026-05-31' };
  const first = await build(days);
  await publish(first.id);
  await weigh(millLane, 900, '2026-05-20');
  const june = { from: '2026-06-01', to: '2026-06-26', baselineFrom: days.from, baselineTo: days.to };
  const beside = await build(june);
  const { content } = await read(beside.id);
  expect(content.changes).toMatchObject([{ key: 'harvest', before: { amount: 21_000 } }]);
  expect(content.carried).toMatchObject({ baseline: 1 });
  await publish(beside.id);

  const april = { from: '2026-04-01', to: '2026-05-30' };
  await publish((await build({ ...june, baselineFrom: april.from, baselineTo: april.to })).id);
  await weigh(quarry, 800, '2026-05-21');
  const late = await read((await build(april)).id);
  expect(late.content.harvest.total).toEqual({ key: 'total', kind: 'protected' });
  await publish(late.id);
  const since = await readAs(people.coordinator, (context) =>
    previewChanges(context, late.id, new Date(clock)),
  );
  expect(since?.sums).toEqual([]);
});

it('is published alone of two drafts that would tell of one site, also when both are published at once', async () => {
  const [, quarry] = batches;
  if (!quarry) throw new Error('no batch');
  // Days that no other report here shares.
  for (const from of ['2026-07-01', '2026-07-06', '2026-07-11']) {
    const period = { from, to: addDays(from, 4) };
    for (const batch of batches) await weigh(batch, 500, from);
    const early = await build(period);
    await weigh(quarry, 50, addDays(from, 1));
    const late = await build(period);
    const answers = await Promise.all(
      [early, late].map(({ id }) => run(publishReportInput, publishReport, { id })),
    );
    expect(answers.map(({ kind }) => kind).sort()).toEqual(['invalid', 'ok']);
  }
});

it('is revised to one next version, also when it is asked for twice at once', async () => {
  const { id } = await build({ from: '2026-05-04', to: '2026-06-24' });
  await publish(id);
  const twice = await Promise.all([1, 2].map(() => done(reviseReportInput, reviseReport, { id })));
  expect(twice[0]).toEqual(twice[1]);
});
