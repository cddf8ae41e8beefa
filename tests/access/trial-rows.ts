import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { assignSlot } from '@/lib/records/trial/assign-slot.command';
import { correctTrial } from '@/lib/records/trial/correct-trial.command';
import { endTrial } from '@/lib/records/trial/end-trial.command';
import { getSlot } from '@/lib/records/trial/get-slot.query';
import { getTrial } from '@/lib/records/trial/get-trial.query';
import { listNextRuns } from '@/lib/records/trial/list-next-runs.query';
import { listTrials } from '@/lib/records/trial/list-trials.query';
import { listTrialsBehind } from '@/lib/records/trial/list-trials-behind.query';
import { noteTrial } from '@/lib/records/trial/note-trial.command';
import { planTrial } from '@/lib/records/trial/plan-trial.command';
import { settleTrialSize } from '@/lib/records/trial/settle-trial-size.command';
import { assignSlotInput, startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrial } from '@/lib/records/trial/start-trial.command';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import {
  correctTrialInput,
  endTrialInput,
  noteTrialInput,
  planTrialInput,
  settleTrialSizeInput,
  startTrialInput,
} from '@/lib/records/trial/trial.input';
import { getTrialResult } from '@/lib/report/trial/get-trial-result.query';
import { listTrialResults } from '@/lib/report/trial/list-trial-results.query';
import { previewTrialResult } from '@/lib/report/trial/preview-trial-result.query';
import { publishTrialResult } from '@/lib/report/trial/publish-trial-result.command';
import { showTrialResult } from '@/lib/report/trial/show-trial-result.command';
import { trialResultInput } from '@/lib/report/trial/trial-result.input';
import { twentyBags } from '../support/shed';
import { command, type OperationRow } from './operation-rows';
import { arrange, now, type World } from './world';

const plan = (world: World) => ({
  title: `Trial ${newId()}`,
  question: 'Does lime lose more?',
  outcome: 'contamination',
  speciesId: world.stock.oyster,
  containerKind: 'bag',
  arms: [
    { label: 'bath', methodId: world.stock.hotWater },
    { label: 'lime', methodId: world.stock.lime },
  ],
  siteIds: [world.people.millLane],
  unitsPerRun: 20,
  expectedPercent: 10,
  differencePoints: 10,
  likeness: '0.1',
  powerPercent: 80,
  blocks: 1,
  startsOn: '2026-07-20',
  daysBetweenBlocks: 14,
  lateAfterDays: 14,
});

const drafted = (world: World) =>
  arrange(world.people.coordinator, planTrialInput, planTrial, plan(world)).then(({ id }) => id);

async function running(world: World): Promise<string> {
  const id = await drafted(world);
  await arrange(world.people.coordinator, startTrialInput, startTrial, { id });
  return id;
}

async function ended(world: World): Promise<string> {
  const id = await running(world);
  await arrange(world.people.coordinator, endTrialInput, endTrial, { id, endNote: 'tried' });
  return id;
}

async function published(world: World): Promise<string> {
  const id = await ended(world);
  await arrange(world.people.coordinator, trialResultInput, publishTrialResult, { id });
  return id;
}

async function firstSlot(world: World): Promise<string> {
  const id = await running(world);
  return readAs(world.people.coordinator, async (context) => {
    const trial = await getTrial(context, id, now);
    return trial?.slots.find(({ place }) => place === 1)?.id ?? '';
  });
}

const text = (prepared: unknown) => String(prepared);

/** Plans are the coordinator's; members of a site read started trials and fill what was drawn for them. */
export const trialRows: readonly OperationRow[] = [
  command('records/trial/plan-trial.command', 'y----', planTrialInput, planTrial, plan),
  command('records/trial/correct-trial.command', 'y----', correctTrialInput, correctTrial, async (world) => ({
    ...plan(world),
    id: await drafted(world),
    revision: 1,
    reason: 'tried',
  })),
  command(
    'records/trial/settle-trial-size.command',
    'y----',
    settleTrialSizeInput,
    settleTrialSize,
    async (world) => ({ id: await drafted(world), revision: 1, blocks: '3' }),
  ),
  command('records/trial/start-trial.command', 'y----', startTrialInput, startTrial, async (world) => ({
    id: await drafted(world),
  })),
  command('records/trial/note-trial.command', 'y----', noteTrialInput, noteTrial, async (world) => ({
    trialId: await running(world),
    note: 'tried',
  })),
  command('records/trial/end-trial.command', 'y----', endTrialInput, endTrial, async (world) => ({
    id: await running(world),
    endNote: 'tried',
  })),
  command('records/trial/assign-slot.command', 'yy---', assignSlotInput, assignSlot, async (world) => ({
    id: await firstSlot(world),
    revision: 1,
    departure: 'the water ran out',
  })),
  command(
    'records/trial/start-trial-batch.command',
    'yy---',
    startTrialBatchInput,
    startTrialBatch,
    async (world) => ({
      ...twentyBags(world.people, world.stock),
      inoculatedOn: '2026-07-20',
      trialSlotId: await firstSlot(world),
    }),
  ),
  {
    file: 'records/trial/get-trial.query',
    may: 'yyy--',
    prepare: running,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => getTrial(context, text(prepared), now))) !== undefined,
  },
  {
    file: 'records/trial/list-trials.query',
    may: 'yyy--',
    prepare: running,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, listTrials)).some(({ id }) => id === prepared),
  },
  {
    file: 'records/trial/get-slot.query',
    may: 'yy---',
    prepare: firstSlot,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => getSlot(context, text(prepared)))) !== undefined,
  },
  {
    file: 'records/trial/list-next-runs.query',
    may: 'yy---',
    prepare: firstSlot,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, listNextRuns)).some(({ slotId }) => slotId === prepared),
  },
  {
    file: 'records/trial/list-trials-behind.query',
    may: 'yy---',
    prepare: running,
    attempt: async (_world, actor, prepared) => {
      const monthsLater = new Date('2027-01-15T12:00:00Z');
      const behind = await readAs(actor, (context) => listTrialsBehind(context, monthsLater));
      return behind.some(({ id }) => id === prepared);
    },
  },
  command(
    'report/trial/publish-trial-result.command',
    'y----',
    trialResultInput,
    publishTrialResult,
    async (world) => ({ id: await ended(world) }),
  ),
  command(
    'report/trial/show-trial-result.command',
    'y----',
    trialResultInput,
    showTrialResult,
    async (world) => ({ id: await published(world) }),
  ),
  {
    file: 'report/trial/preview-trial-result.query',
    may: 'y----',
    prepare: ended,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => previewTrialResult(context, text(prepared), now))) !== undefined,
  },
  {
    file: 'report/trial/get-trial-result.query',
    may: 'yyy--',
    prepare: published,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => getTrialResult(context, text(prepared)))) !== undefined,
  },
  {
    file: 'report/trial/list-trial-results.query',
    may: 'yyy--',
    prepare: published,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, listTrialResults)).some(({ trialId }) => trialId === prepared),
  },
];
