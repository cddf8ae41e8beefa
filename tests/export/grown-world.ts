import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import { addConditionsInput, addPlaceInput } from '@/lib/records/condition/condition.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { addReadingInput } from '@/lib/records/treatment/treatment.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { arrange } from '../access/world';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed, twentyBags } from '../support/shed';

export type GrownWorld = { readonly people: Growers; readonly stock: Shed; readonly batch: string };

/** Larkmoor with one batch of Mill Lane that has something of every kind. */
export async function grownWorld(superuser: string): Promise<GrownWorld> {
  const people = await growers(superuser);
  const stock = await shed(people);
  const { member } = people;
  const { id: batch } = await arrange(member, startBatchInput, startBatch, twentyBags(people, stock));
  const at = { batchId: batch };
  const note = '=HYPERLINK("http://example.org")';
  await arrange(member, recordLookInput, recordLook, { ...at, lookedOn: '2026-04-13', note });
  const { id: findingId } = await arrange(member, recordFindingInput, recordFinding, {
    ...{ ...at, foundOn: '2026-04-14', units: 2, sign: 'green', stage: 'colonising', action: 'isolated' },
  });
  await arrange(member, recordFollowUpInput, recordFollowUp, {
    ...{ findingId, doneOn: '2026-04-16', action: 'discarded', units: 1 },
  });
  await arrange(member, recordLossInput, recordLoss, {
    ...{ ...at, lostOn: '2026-04-20', units: 1, cause: 'eaten', note: 'line one\nline two, "quoted"' },
  });
  await arrange(member, recordCheckInput, recordCheck, {
    ...at,
    checkedOn: '2026-04-20',
    kind: 'fully_colonised',
  });
  await arrange(member, recordWeighingInput, recordWeighing, {
    ...{ weighedOn: '2026-05-04', fresh: 3_000, lines: [{ ...at, flush: 1 }], sold: 2_000, note: 'NA' },
  });
  await arrange(member, addReadingInput, addReading, {
    ...{ treatmentRunId: stock.bathRun, readAt: '2026-03-30T15:00:00Z', place: 'water', celsius: 68 },
  });
  const { id: placeId } = await arrange(member, addPlaceInput, addPlace, {
    ...{ siteId: people.millLane, name: 'Warm room' },
  });
  await arrange(member, addConditionsInput, addConditions, {
    ...{ placeId, readAt: '2026-04-02T12:00:00Z', celsius: 21.5, humidityPercent: 90 },
  });
  return { people, stock, batch };
}
