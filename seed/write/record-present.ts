import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { addMinutes } from '@/lib/growing/treatment-reading';
import { addPlace } from '@/lib/records/condition/add-place.command';
import {
  addPlaceInput,
  importConditionsInput,
  placeBatchInput,
} from '@/lib/records/condition/condition.input';
import { importConditions } from '@/lib/records/condition/import-conditions.command';
import { placeBatch } from '@/lib/records/condition/place-batch.command';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listOpenBatches } from '@/lib/records/shed/list-open-batches.query';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { addReadingInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { loggerDays, type PresentPlace, presentPlaces, presentRuns } from '../story/present';
import { inOneGo, type Take } from './in-one-go';
import { recordPhotos } from './record-photos';

const layout = {
  delimiter: 'semicolon',
  decimal: 'point',
  dateOrder: 'ymd',
  temperatureUnit: 'celsius',
  linesBefore: 1,
  columns: ['moment', 'temperature', 'humidity', 'carbon_dioxide'],
};

/** What the logger of a place wrote each hour until `now`: a wave within the day, another over the weeks. */
function logged({ celsius, humidity, carbonDioxide }: PresentPlace, now: Date) {
  const hour = new Date(Math.floor(now.getTime() / 3_600_000) * 3_600_000);
  const wave = ({ mean, swing }: { mean: number; swing: number }, ago: number, phase: number) =>
    Math.round(
      10 * (mean + swing * Math.sin((2 * Math.PI * (ago + phase)) / 24) + 0.4 * swing * Math.sin(ago / 70)),
    ) / 10;
  return Array.from({ length: loggerDays * 24 }, (_, ago) => addMinutes(hour, -60 * ago)).flatMap(
    (at, ago) => [
      { at, measure: 'temperature', value: wave(celsius, ago, 0) },
      { at, measure: 'humidity', value: Math.min(99, wave(humidity, ago, 12)) },
      { at, measure: 'carbon_dioxide', value: Math.round(wave(carbonDioxide, ago, 5)) },
    ],
  );
}

async function recordPlaces(take: Take, siteId: string, siteCode: string, now: Date): Promise<string[]> {
  const ids: string[] = [];
  for (const place of presentPlaces.filter((one) => one.siteCode === siteCode)) {
    const { id: placeId } = await take(addPlaceInput, addPlace, { siteId, name: place.name });
    await take(importConditionsInput, importConditions, { placeId, layout, readings: logged(place, now) });
    ids.push(placeId);
  }
  return ids;
}

/** Records what goes on at a site while the demo is made: clocks that run, loggers, and where its open batches stand. */
export async function recordPresent(
  member: Actor,
  siteCode: string,
  siteId: string,
  today: string,
  now: Date,
): Promise<void> {
  const runs = presentRuns.filter((run) => run.siteCode === siteCode);
  if (runs.length === 0 && presentPlaces.every((place) => place.siteCode !== siteCode)) return;
  const { methods } = await readAs(member, listChoices);
  const open = await readAs(member, listOpenBatches);
  await inOneGo(member, async (take) => {
    for (const run of runs) {
      const heated = run.method === 'hot_water_bath';
      const { id } = await take(startTreatmentInput, startTreatment, {
        siteId,
        methodId: methods.find(({ kind }) => kind === run.method)?.id,
        startedAt: addMinutes(now, -run.startedAgo),
        endedAt: run.endedAgo === null ? '' : addMinutes(now, -run.endedAgo),
        water: 180_000,
        lime: run.method === 'cold_lime_soak' ? 500 : '',
        load: 12_000,
      });
      for (const { ago, celsius, ph } of run.readings)
        await take(addReadingInput, addReading, {
          treatmentRunId: id,
          readAt: addMinutes(now, -ago),
          place: heated ? 'load_middle' : 'water',
          celsius,
          ph,
        });
    }
    const [warm, fruiting] = await recordPlaces(take, siteId, siteCode, now);
    const indoors = open.filter(
      (batch) => batch.siteId === siteId && !['bed', 'log'].includes(batch.container),
    );
    for (const { id: batchId, inoculatedOn, lastPickedOn, colonised } of indoors) {
      const day = addDays(today, -14);
      const placedOn = inoculatedOn > day ? inoculatedOn : day;
      const placeId = lastPickedOn !== null || colonised ? fruiting : warm;
      if (placeId) await take(placeBatchInput, placeBatch, { batchId, placeId, placedOn });
    }
  });
  await recordPhotos(
    member,
    open.filter((batch) => batch.siteId === siteId && batch.container === 'bag'),
  );
}
