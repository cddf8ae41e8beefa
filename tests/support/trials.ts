import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { getTrial, type TrialView } from '@/lib/records/trial/get-trial.query';
import { planTrial } from '@/lib/records/trial/plan-trial.command';
import { startTrial } from '@/lib/records/trial/start-trial.command';
import { planTrialInput, startTrialInput } from '@/lib/records/trial/trial.input';
import type { Growers } from './growers';
import type { Shed } from './shed';

/** The day on which trials of the tests are planned and started. */
export const trialDay = new Date('2026-04-01T15:00:00Z');

/** Bath against lime in bags of twenty at Mill Lane and Quarry Farm, two runs of each at each. */
export function bathOrLime({ millLane, quarry }: Growers, stock: Shed, changes: object = {}) {
  return {
    title: 'Bath or lime',
    question: 'Does lime lose more bags than the bath?',
    outcome: 'contamination',
    speciesId: stock.oyster,
    containerKind: 'bag',
    arms: [
      { label: 'hot-water bath', methodId: stock.hotWater },
      { label: 'lime soak', methodId: stock.lime },
    ],
    siteIds: [millLane, quarry],
    unitsPerRun: 20,
    expectedPercent: '10',
    differencePoints: '20',
    likeness: '0.1',
    powerPercent: '80',
    blocks: '2',
    startsOn: '2026-04-01',
    daysBetweenBlocks: '14',
    lateAfterDays: '7',
    ...changes,
  };
}

export async function plannedTrial(people: Growers, stock: Shed, changes: object = {}): Promise<string> {
  const raw = bathOrLime(people, stock, changes);
  const result = await runAs(people.coordinator, planTrialInput, planTrial, raw, { now: trialDay });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

export async function trialNow(people: Growers, id: string, now = trialDay): Promise<TrialView> {
  const trial = await readAs(people.coordinator, (context) => getTrial(context, id, now));
  if (trial === undefined) throw new Error('the trial is not there');
  return trial;
}

/** Started with the same list each time, unless `seed` names another: what a test finds must not hang on the drawing. */
export async function startedTrial(
  people: Growers,
  stock: Shed,
  changes: object = {},
  seed = 'a list for tests',
): Promise<TrialView> {
  const id = await plannedTrial(people, stock, changes);
  const raw = { id, seed };
  const result = await runAs(people.coordinator, startTrialInput, startTrial, raw, {
    now: trialDay,
    origin: 'seed',
  });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return trialNow(people, id);
}
