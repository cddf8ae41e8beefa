import { beforeAll, expect, it } from 'vitest';
import type { z } from 'zod';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { getReplacedDraft } from '@/lib/report/get-replaced-draft.query';
import { getReport } from '@/lib/report/get-report.query';
import { publishReport } from '@/lib/report/publish-report.command';
import { rebuildDraft } from '@/lib/report/rebuild-draft.command';
import { rebuildDraftInput } from '@/lib/report/rebuild-draft.input';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { addStory } from '@/lib/report/story/add-story.command';
import { addStoryInput } from '@/lib/report/story/story.input';
import { writeWords } from '@/lib/report/write-words.command';
import { writeWordsInput } from '@/lib/report/write-words.input';
import { startBags } from '../support/bags';
import { testDatabase } from '../support/database';
import { growers } from '../support/growers';
import { shed } from '../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const now = new Date('2026-07-20T15:00:00Z');

const run = <S extends z.ZodType, T>(schema: S, command: Command<z.output<S>, T>, raw: unknown) =>
  runAs(people.coordinator, schema, command, raw, { now });
async function done<S extends z.ZodType, T>(schema: S, command: Command<z.output<S>, T>, raw: unknown) {
  const result = await run(schema, command, raw);
  if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
  return result.value;
}
const read = (id: string) => readAs(people.coordinator, (context) => getReport(context, id));
const spring = { from: '2026-04-01', to: '2026-06-30' };
const build = async () =>
  (await done(buildReportInput, buildReport, { title: 'Spring', ...spring, indicators: ['harvest'] })).id;

beforeAll(async () => {
  const batchId = await startBags(people, await shed(people));
  const lines = [{ batchId, flush: 1 }];
  await done(recordWeighingInput, recordWeighing, {
    weighedOn: '2026-05-04',
    fresh: 3000,
    lines,
    sold: 3000,
  });
});

it('changes the days of a draft, keeps its words and stories, and tells the figures of both', async () => {
  const first = await build();
  const revision = (await read(first))?.revision;
  const words = { opening: 'A wet spring.' };
  await done(writeWordsInput, writeWords, { id: first, revision, title: 'Wet spring', words });
  const story = { title: 'Straw', words: 'From the barn.', consent: 'yes', consentOn: '2026-07-01' };
  await done(addStoryInput, addStory, { ...story, reportId: first });
  const days = { from: '2026-03-01', to: '2026-04-15', baselineFrom: '2025-03-01', baselineTo: '2025-04-15' };
  const { id } = await done(rebuildDraftInput, rebuildDraft, { id: first, ...days });
  const found = await readAs(people.coordinator, (context) => getReplacedDraft(context, id));
  expect(found?.report).toMatchObject({ title: 'Wet spring', words, version: 1, publishedAt: undefined });
  expect(found?.report.stories.map(({ title }) => title)).toEqual(['Straw']);
  expect(found?.report.content).toMatchObject({
    ...{ from: days.from, to: days.to },
    baseline: { from: days.baselineFrom, to: days.baselineTo },
    harvest: { total: { amount: 0 } },
  });
  expect(found?.before.content).toMatchObject({ ...spring, harvest: { total: { kind: 'protected' } } });
  expect(found?.before.content.baseline).toBeUndefined();
  // The draft that was replaced is off the list; sending the form again makes no third one.
  expect(await read(first)).toBeUndefined();
  expect(await done(rebuildDraftInput, rebuildDraft, { id: first, ...spring })).toEqual({ id });
});

it('refuses days that the form for a new report would refuse, and changes nothing then', async () => {
  const id = await build();
  const wrong = {
    from: '2026-04-01',
    to: '2026-06-30',
    baselineFrom: '2025-04-01',
    baselineTo: '2026-04-01',
  };
  expect(await run(rebuildDraftInput, rebuildDraft, { id, ...wrong })).toMatchObject({
    kind: 'invalid',
    errors: [{ field: 'baselineTo', code: 'baseline-before' }],
  });
  expect((await read(id))?.content).toMatchObject(spring);
});

it('leaves a published report alone, and the period of its next version', async () => {
  const id = await build();
  await done(publishReportInput, publishReport, { id });
  const longer = { from: '2026-03-01', to: '2026-06-30' };
  expect(await run(rebuildDraftInput, rebuildDraft, { id, ...longer })).toMatchObject({ kind: 'not-found' });
  const next = (await done(reviseReportInput, reviseReport, { id })).id;
  expect(await run(rebuildDraftInput, rebuildDraft, { id: next, ...longer })).toMatchObject({
    kind: 'invalid',
    errors: [{ field: 'from', code: 'report-follows' }],
  });
  // With the same days it is built anew from newer records, and still is the next version.
  const anew = (await done(rebuildDraftInput, rebuildDraft, { id: next, ...spring })).id;
  expect(await read(anew)).toMatchObject({ version: 2, earlier: { id } });
});
