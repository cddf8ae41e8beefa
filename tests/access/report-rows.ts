import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { discardDraft } from '@/lib/report/discard-draft.command';
import { getReplacedDraft } from '@/lib/report/get-replaced-draft.query';
import { previewChanges } from '@/lib/report/preview-changes.query';
import { publishReport } from '@/lib/report/publish-report.command';
import { rebuildDraft } from '@/lib/report/rebuild-draft.command';
import { rebuildDraftInput } from '@/lib/report/rebuild-draft.input';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { writeWords } from '@/lib/report/write-words.command';
import { writeWordsInput } from '@/lib/report/write-words.input';
import { command, query } from './operation-rows';
import { arrange, revisionOf, type World } from './world';

const year = { title: 'A year', from: '2026-01-01', to: '2026-07-20', indicators: ['harvest', 'methods'] };

/** A draft of its own, so that a row changes nothing that another row stands on. */
export async function anotherDraft(world: World): Promise<string> {
  return (await arrange(world.people.coordinator, buildReportInput, buildReport, year)).id;
}

export async function anotherPublished(world: World): Promise<string> {
  const id = await anotherDraft(world);
  return (await arrange(world.people.coordinator, publishReportInput, publishReport, { id })).id;
}

const anew = new WeakMap<World, Promise<string>>();

/** A draft that was built anew, one for each world. */
function rebuilt(world: World): Promise<string> {
  const made =
    anew.get(world) ??
    anotherDraft(world)
      .then((id) =>
        arrange(world.people.coordinator, rebuildDraftInput, rebuildDraft, {
          ...{ id, from: year.from, to: '2026-06-30' },
        }),
      )
      .then(({ id }) => id);
  anew.set(world, made);
  return made;
}

/** Every command of a funder's report, and who may run it. */
export const reportRows = [
  command('report/build-report.command', 'y---o', buildReportInput, buildReport, () => year),
  command('report/publish-report.command', 'y----', publishReportInput, publishReport, async (w) => ({
    id: await anotherDraft(w),
  })),
  command('report/discard-draft.command', 'y----', publishReportInput, discardDraft, async (w) => ({
    id: await anotherDraft(w),
  })),
  command('report/rebuild-draft.command', 'y----', rebuildDraftInput, rebuildDraft, async (w) => ({
    ...{ from: year.from, to: '2026-06-30' },
    id: await anotherDraft(w),
  })),
  command('report/revise-report.command', 'y----', reviseReportInput, reviseReport, async (w) => ({
    id: await anotherPublished(w),
  })),
  command('report/write-words.command', 'y----', writeWordsInput, writeWords, async (w) => {
    const id = await anotherDraft(w);
    const words = { opening: 'A year with more straw than ever.' };
    return { id, revision: await revisionOf(w, 'report', id), title: 'A year', words };
  }),
];

/** What only a coordinator may ask of a report. */
export const reportQueryRows = [
  {
    ...query(
      'report/get-replaced-draft.query',
      'y----',
      async (c, w) => getReplacedDraft(c, await rebuilt(w)),
      (answer) => answer !== undefined,
    ),
    prepare: rebuilt,
  },
  query(
    'report/preview-changes.query',
    'y----',
    (c, w) => previewChanges(c, w.published, new Date()),
    (answer) => answer !== undefined,
  ),
];
