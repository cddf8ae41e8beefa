import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { getTrial, type TrialView } from '@/lib/records/trial/get-trial.query';
import { planTrial } from '@/lib/records/trial/plan-trial.command';
import { startTrial } from '@/lib/records/trial/start-trial.command';
import { planTrialInput, startTrialInput } from '@/lib/records/trial/trial.input';
import { finishedTrial, plannedTrial, runningTrial } from '../story/trials';
import { truths } from '../story/truths';
import { inOneGo } from './in-one-go';
import { recordFinishedTrial } from './record-finished-trial';
import { isTrialMethod, recordTrialRun } from './record-trial-run';
import { readTrialBook, type TrialBook } from './trial-book';

type Story = typeof finishedTrial | typeof runningTrial | typeof plannedTrial;

const noon = (day: string) => new Date(`${day}T17:00:00Z`);

async function plan(coordinator: Actor, book: TrialBook, story: Story, startsOn: string): Promise<string> {
  return inOneGo(coordinator, async (take) => {
    const { id } = await take(planTrialInput, planTrial, {
      ...story.plan,
      startsOn,
      speciesId: book.speciesId,
      containerKind: 'bucket',
      arms: story.arms.map(({ label, method }) => ({ label, methodId: book.methodId(method) })),
      siteIds: book.siteIds(story.sites),
    });
    return id;
  });
}

/** Draws the list on the day on which the story starts it. */
async function start(coordinator: Actor, id: string, seed: string, day: string): Promise<TrialView> {
  await inOneGo(coordinator, (take) => take(startTrialInput, startTrial, { id, seed }), noon(day));
  const trial = await readAs(coordinator, (context) => getTrial(context, id, noon(day)));
  if (trial === undefined) throw new Error('a trial of the story did not start');
  return trial;
}

/** Records the trials of the story as they stand on `today`. */
export async function recordTrials(coordinator: Actor, today: string): Promise<void> {
  const book = await readTrialBook(coordinator, truths.badLot.code);
  const ago = (days: number) => addDays(today, -days);

  const finishedId = await plan(coordinator, book, finishedTrial, ago(finishedTrial.startedDaysAgo));
  const finished = await start(
    coordinator,
    finishedId,
    finishedTrial.seed,
    ago(finishedTrial.startedDaysAgo),
  );
  await recordFinishedTrial(coordinator, book, finished, today);

  const runningId = await plan(coordinator, book, runningTrial, ago(runningTrial.startedDaysAgo));
  const running = await start(coordinator, runningId, runningTrial.seed, ago(runningTrial.startedDaysAgo));
  const made: Readonly<Record<string, number>> = runningTrial.made;
  await inOneGo(coordinator, async (take) => {
    for (const slot of running.slots) {
      if (slot.place > (made[book.siteCode(slot.siteId)] ?? 0)) continue;
      const method = runningTrial.arms.find(({ label }) => label === slot.arm)?.method;
      if (method === undefined || !isTrialMethod(method)) throw new Error(`no method for ${slot.arm}`);
      const inoculatedOn = addDays(slot.plannedOn, 3 * slot.place);
      const { id: slotId, siteId } = slot;
      await recordTrialRun(take, book, { slotId, siteId, method, inoculatedOn, units: running.unitsPerRun });
    }
  });

  await plan(coordinator, book, plannedTrial, addDays(today, plannedTrial.startsInDays));
}
