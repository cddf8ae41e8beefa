import { addDays } from '@/lib/growing/calendar-date';
import { bagCrops } from '../story/crops';
import { type StorySite, storySites } from '../story/sites';
import { truths } from '../story/truths';
import { between } from './pick';
import { type PlanState, planBagBatch } from './plan-bag-batch';
import { planBed } from './plan-bed';
import { planLogs } from './plan-logs';
import { planSpawnLots } from './plan-spawn-lots';
import type { PlannedBatch, StoryPlan } from './story-plan';
import { storyStreams } from './story-stream';

const storyDays = truths.seasons * 365;

/** Bed and log batches of a site, over all seasons. */
const otherBatches = {
  bags: { beds: 0, logs: 0 },
  beds: { beds: 14, logs: 0 },
  logs: { beds: 0, logs: 16 },
  mixed: { beds: 6, logs: 4 },
} as const;

/** The whole story from one seed, the last day of it being `today`. Another day tells the same story, moved. */
export function planStory(today: string, seed: number = truths.seed): StoryPlan {
  const streams = storyStreams(seed);
  const start = addDays(today, -storyDays);
  const lots = planSpawnLots(streams, start, storyDays);
  const state: PlanState = { streams, today, start, lots, runs: [] };
  const batches: PlannedBatch[] = [];
  for (const site of storySites) {
    batches.push(...planSite(state, site));
  }
  batches.sort((a, b) => a.inoculatedOn.localeCompare(b.inoculatedOn));
  return { lots, runs: state.runs, batches };
}

function planSite(state: PlanState, site: StorySite): PlannedBatch[] {
  const random = state.streams('site', site.code);
  const siteLogit = random.normal() * truths.siteDeviation + (site.tidy ? truths.tidySiteLogit : 0);
  const others = otherBatches[site.grows];
  const batches: PlannedBatch[] = [];
  const bags = truths.batchesPerSite - others.beds - others.logs;
  // Batches come two or three to a treatment run: bags of one run are not independent of each other.
  let offset = between(random, 0, 8);
  while (batches.length < bags && offset < storyDays) {
    const together = Math.min(between(random, 1, 3), bags - batches.length);
    batches.push(...planBagBatch(state, site, siteLogit, addDays(state.start, offset), together, bagCrops));
    offset += Math.max(4, Math.round((storyDays / bags) * together + random.normal() * 3));
  }
  for (let index = 0; index < others.beds; index += 1) batches.push(planBed(state, site, siteLogit, index));
  for (let index = 0; index < others.logs; index += 1) batches.push(planLogs(state, site, index));
  return batches;
}
