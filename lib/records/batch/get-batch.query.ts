import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { nothingExpected } from '@/lib/growing/expected-days';
import { secondLifeFirstMushroomDays } from '@/lib/growing/second-life';
import { expectedDaysOf } from '../settings/expected-days-columns';
import { type BatchCorrection, batchCorrections } from './batch-corrections';
import { type BatchFigures, batchFigures } from './batch-figures';
import { batchInclude } from './batch-include';
import { batchLinks, type LinkedBatch } from './batch-links';
import { batchStory, type StoryEntry } from './batch-story';
import { type BatchView, batchView } from './batch-view';
import { colleagueNames } from './colleague-names';
import { type NextStep, nextStep } from './next-step';

/** Everything on a batch's page. */
export type BatchPage = {
  readonly batch: BatchView;
  readonly figures: BatchFigures;
  readonly story: readonly StoryEntry[];
  readonly corrections: readonly BatchCorrection[];
  readonly sources: readonly LinkedBatch[];
  readonly secondLives: readonly LinkedBatch[];
  /** Names of those who wrote something down, by their ids. */
  readonly names: Readonly<Record<string, string>>;
  readonly next: NextStep;
  readonly today: string;
};

/** One batch with its figures and its story; undefined when it is not there or not the actor's to see. */
export async function getBatch(context: ReadContext, id: string, now: Date): Promise<BatchPage | undefined> {
  const row = await context.db.batch.findFirst({ where: { id }, include: batchInclude });
  if (!row) return undefined;
  const batch = batchView(row);
  const today = todayInZone(batch.timeZone, now);
  const { moved, sources, secondLives } = await batchLinks(context, id);
  const figures = batchFigures(row, moved, today);
  const story = batchStory(row);
  const corrections = await batchCorrections(context, id);
  const counted = story.filter(({ voidReason }) => voidReason === null);
  const lastOf = (entries: readonly StoryEntry[]) => entries.at(-1)?.on ?? null;
  const { contamination } = figures;
  const window = await context.db.assessmentWindow.findFirst({
    where: { speciesId: row.speciesId, containerKind: row.containerKind, voidedAt: null },
  });
  const expected = window === null ? nothingExpected : expectedDaysOf(window);
  return {
    ...{ batch, figures, story, corrections, today, sources, secondLives },
    names: await colleagueNames(context, [
      ...story.map(({ byId }) => byId),
      ...corrections.map(({ byId }) => byId),
    ]),
    next: nextStep({
      containerKind: batch.containerKind,
      closed: batch.closedOn !== null || batch.voidReason !== null,
      live: figures.units.live,
      notInspected: contamination.kind === 'value' && contamination.value.kind === 'not-inspected',
      inoculatedOn: batch.inoculatedOn,
      lastHarvestOn: lastOf(counted.filter(({ kind }) => kind === 'weighing')),
      lastEntryOn: lastOf(counted) ?? batch.inoculatedOn,
      colonised: counted.some((entry) => entry.kind === 'check' && entry.what === 'fully_colonised'),
      colonisedDays: row.secondLife ? null : (expected.colonised?.to ?? null),
      firstHarvestDays: row.secondLife
        ? secondLifeFirstMushroomDays.from
        : (expected.firstHarvest?.to ?? null),
      today,
    }),
  };
}
