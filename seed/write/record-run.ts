import { addMinutes } from '@/lib/growing/treatment-reading';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { addReadingInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import type { PlannedRun } from '../plan/story-plan';
import type { Take } from './in-one-go';

/** Records a run that is over, with its readings; answers its id. */
export async function recordRun(
  take: Take,
  run: PlannedRun,
  siteId: string,
  methodId: string,
  load: number | '',
): Promise<string> {
  const startedAt = new Date(`${run.date}T14:00:00Z`);
  const heat = run.method === 'hot_water_bath' || run.method === 'steam';
  const lime = run.method === 'cold_lime_soak';
  const { id } = await take(startTreatmentInput, startTreatment, {
    siteId,
    methodId,
    startedAt,
    endedAt: addMinutes(startedAt, run.minutes),
    water: run.method === 'steam' ? '' : 180_000,
    lime: lime ? 500 : '',
    load,
    loadCelsiusAtSpawning: heat ? 24 : '',
  });
  for (const reading of run.readings) {
    await take(addReadingInput, addReading, {
      treatmentRunId: id,
      readAt: addMinutes(startedAt, reading.minutes),
      place: heat ? 'load_middle' : 'water',
      celsius: reading.celsius,
      ph: reading.ph,
    });
  }
  return id;
}
