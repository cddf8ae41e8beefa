import { addDays } from '@/lib/growing/calendar-date';
import type { MethodKind } from '@/lib/growing/vocabulary';
import { startTrialBatchInput } from '@/lib/records/trial/slot.input';
import { startTrialBatch } from '@/lib/records/trial/start-trial-batch.command';
import type { Take } from './in-one-go';
import { recordRun } from './record-run';
import type { TrialBook } from './trial-book';

const minutesOf = { hot_water_bath: 90, cold_lime_soak: 16 * 60, cold_ferment: 9 * 24 * 60 } as const;
const readingsOf = {
  hot_water_bath: [
    { minutes: 10, celsius: 68, ph: null },
    { minutes: 80, celsius: 66, ph: null },
  ],
  cold_lime_soak: [{ minutes: 30, celsius: 14, ph: 12.4 }],
  cold_ferment: [{ minutes: 8 * 24 * 60, celsius: 17, ph: 4.6 }],
} as const;
type TrialMethod = keyof typeof minutesOf;

export function isTrialMethod(kind: MethodKind): kind is TrialMethod {
  return kind in minutesOf;
}

export type TrialBatch = {
  readonly slotId: string;
  readonly siteId: string;
  /** What was really done, which need not be what was drawn. */
  readonly method: TrialMethod;
  readonly inoculatedOn: string;
  readonly units: number;
};

/** Kilograms of treated straw in one bucket, in grams, and the spawn mixed in. */
const bucketGrams = 4_000;
const spawnGrams = 200;

/** Records the treatment of one run of a trial and the buckets filled from it; answers the batch's id. */
export async function recordTrialRun(take: Take, book: TrialBook, batch: TrialBatch): Promise<string> {
  const { method, siteId, inoculatedOn, units } = batch;
  const minutes = minutesOf[method];
  const date = addDays(inoculatedOn, -Math.ceil(minutes / (24 * 60)));
  const planned = { key: '', siteCode: '', method, date, minutes, readings: readingsOf[method], logit: 0 };
  const runId = await recordRun(take, planned, siteId, book.methodId(method), '');
  const { id } = await take(startTrialBatchInput, startTrialBatch, {
    trialSlotId: batch.slotId,
    siteId,
    speciesId: book.speciesId,
    containerKind: 'bucket',
    unitCount: units,
    inoculatedOn,
    components: [
      {
        lotId: book.straw(inoculatedOn),
        treatment: `run:${runId}`,
        role: 'substrate',
        massStage: 'filled',
        mass: units * bucketGrams,
      },
    ],
    spawn: [{ lotId: book.spawn, mass: units * spawnGrams }],
    filledMass: units * bucketGrams,
    moistureSource: 'measured',
    moisturePercent: 70,
  });
  return id;
}
