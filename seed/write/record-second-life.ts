import { addDays } from '@/lib/growing/calendar-date';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import type { PlannedBatch } from '../plan/story-plan';
import type { LotBook } from './add-lots';
import type { Take } from './in-one-go';

/** Places, among the closed bag batches of a site, of those that go on: long enough ago to have cropped again. */
const placesThatGoOn = [4, 11];

/** Days from the move to the one weighing of a second life. */
const daysToWeighing = 33;

/** The batches of a site whose spent bags are laid into a bed once they are closed, and whose bed has cropped since. */
export function batchesThatGoOn(batches: readonly PlannedBatch[]): ReadonlySet<PlannedBatch> {
  const latest = batches.at(-1)?.inoculatedOn ?? '';
  const spent = batches.filter(
    ({ container, closedOn, findings }) =>
      container === 'bag' &&
      closedOn !== null &&
      findings.length === 0 &&
      addDays(closedOn, daysToWeighing) <= latest,
  );
  return new Set(placesThatGoOn.flatMap((place) => spent[place] ?? []));
}

/** Lays eight of the spent bags into a bed of their own, mulched or buried by turns, and weighs what came of it. */
export async function recordSecondLife(
  take: Take,
  book: LotBook,
  batch: PlannedBatch,
  { batchId, siteId }: { readonly batchId: string; readonly siteId: string },
): Promise<void> {
  const movedOn = batch.closedOn ?? batch.inoculatedOn;
  const units = Math.min(8, batch.unitCount - (batch.lost?.units ?? 0));
  const mulched = batch.unitCount % 2 === 0;
  const bed = await take(startSecondLifeInput, startSecondLife, {
    siteId,
    speciesId: book.choices.species.find(({ code }) => code === batch.speciesCode)?.id,
    containerKind: 'bed',
    unitCount: 1,
    inoculatedOn: movedOn,
    moistureSource: 'none',
    bedArea: 12_000,
    way: mulched ? 'mulched_with_straw' : 'buried_in_soil',
    layers: [
      { material: 'spent_substrate', thickness: 100 },
      { material: mulched ? 'straw' : 'soil', thickness: 50 },
    ],
    sources: [{ batchId, units }],
  });
  await take(recordWeighingInput, recordWeighing, {
    weighedOn: addDays(movedOn, daysToWeighing),
    fresh: units * 90,
    lines: [{ batchId: bed.id, flush: 1 }],
  });
}
