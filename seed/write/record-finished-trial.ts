import type { Actor } from '@/lib/access/actor';
import { addDays } from '@/lib/growing/calendar-date';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { endTrial } from '@/lib/records/trial/end-trial.command';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { noteTrial } from '@/lib/records/trial/note-trial.command';
import { endTrialInput, noteTrialInput } from '@/lib/records/trial/trial.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { publishTrialResult } from '@/lib/report/trial/publish-trial-result.command';
import { showTrialResult } from '@/lib/report/trial/show-trial-result.command';
import { trialResultInput } from '@/lib/report/trial/trial-result.input';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { finishedTrial } from '../story/trials';
import { inOneGo, type Take } from './in-one-go';
import { recordTrialRun } from './record-trial-run';
import type { TrialBook } from './trial-book';

/** Fresh grams of a living bucket over its one flush. */
const gramsPerBucket = 750;
const daysToFinding = 14;
const daysToLook = 45;
const daysToHarvest = 40;
const daysToClose = 62;

/** What happened to a batch once it was filled: some buckets green, one harvest of the rest, closed. */
async function recordFate(take: Take, batchId: string, inoculatedOn: string, units: number, lost: number) {
  const day = (days: number) => addDays(inoculatedOn, days);
  if (lost > 0)
    await take(recordFindingInput, recordFinding, {
      batchId,
      foundOn: day(daysToFinding),
      units: lost,
      sign: 'green',
      stage: 'colonising',
      action: 'discarded',
    });
  if (lost < units) {
    await take(recordWeighingInput, recordWeighing, {
      weighedOn: day(daysToHarvest),
      fresh: (units - lost) * gramsPerBucket,
      lines: [{ batchId, flush: 1 }],
    });
    await take(recordLookInput, recordLook, { batchId, lookedOn: day(daysToLook) });
  }
  await take(closeBatchInput, closeBatch, {
    batchId,
    closedOn: day(daysToClose),
    closeReason: 'finished',
    spentDestination: 'composted',
    noHarvest: lost < units ? '' : 'none_picked',
  });
}

/** Makes the drawn runs, with one treated otherwise, one late and one never made, then ends and publishes the trial. */
export async function recordFinishedTrial(
  coordinator: Actor,
  book: TrialBook,
  trial: TrialView,
  today: string,
): Promise<void> {
  const random = seededRandom(finishedTrial.outcomeSeed);
  const [bath, ferment] = finishedTrial.arms;
  const size = 1 / finishedTrial.likeness - 1;
  const last = trial.slots.at(-1)?.id;
  const otherwise = trial.slots.find(({ arm, block }) => arm === ferment.label && block === 2)?.id;
  const late = trial.slots.find(({ place }) => place === finishedTrial.plan.blocks * 2)?.id;
  await inOneGo(coordinator, async (take) => {
    for (const slot of trial.slots) {
      if (slot.id === last) continue;
      const drawn = slot.arm === bath.label ? bath.method : ferment.method;
      const method = slot.id === otherwise ? bath.method : drawn;
      const mean = finishedTrial.truth[method === bath.method ? 0 : 1] ?? 0;
      const lost = random.binomial(trial.unitsPerRun, random.beta(mean * size, (1 - mean) * size));
      const inoculatedOn = addDays(
        slot.plannedOn,
        slot.id === late ? 20 : 1 + (slot.place % 2 === 0 ? 4 : 0),
      );
      const { id: slotId, siteId } = slot;
      const units = trial.unitsPerRun;
      const batchId = await recordTrialRun(take, book, { slotId, siteId, method, inoculatedOn, units });
      await recordFate(take, batchId, inoculatedOn, units, lost);
    }
  });
  const { id } = trial;
  await inOneGo(
    coordinator,
    (take) =>
      take(noteTrialInput, noteTrial, {
        trialId: id,
        note: 'The ferment of the second round is left two days longer where nights are below 10 °C.',
      }),
    new Date(`${addDays(today, -finishedTrial.startedDaysAgo + 10)}T17:00:00Z`),
  );
  await inOneGo(
    coordinator,
    async (take) => {
      await take(endTrialInput, endTrial, {
        id,
        endNote: 'All runs but one are made, closed and looked at.',
      });
      await take(trialResultInput, publishTrialResult, { id });
      await take(trialResultInput, showTrialResult, { id });
    },
    new Date(`${addDays(today, -finishedTrial.endedDaysAgo)}T17:00:00Z`),
  );
}
