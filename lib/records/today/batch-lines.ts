import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { daysBetween, todayInZone } from '@/lib/growing/calendar-date';
import { dueOfBatch } from '@/lib/growing/due/due-of-batch';
import { urgencyOn } from '@/lib/growing/due/urgency';
import { expectedDaysOf } from '../settings/expected-days-columns';
import type { BatchLine } from './due-line';
import { mostLookedAt } from './most-looked-at';
import { readEmptied } from './read-emptied';
import { readOpenBatches } from './read-open-batches';
import { readOwnDays } from './read-own-days';

/** What is due of the open batches at these sites, or at all that the actor may see. */
export async function batchLines(
  context: ReadContext,
  now: Date,
  sites: string[] | null,
): Promise<BatchLine[]> {
  const batches = await readOpenBatches(context, sites, mostLookedAt);
  const own = await readOwnDays(context, batches);
  const emptied = await readEmptied(context, batches);
  const zones = [...new Set(batches.map(({ timeZone }) => timeZone))];
  const days = new Map(zones.map((zone) => [zone, todayInZone(zone, now)]));
  return batches.flatMap((batch): BatchLine[] => {
    const { id, code, siteId, siteName, timeZone, container, speciesEn, speciesEs, enteredOn } = batch;
    const today = days.get(timeZone) ?? todayInZone(timeZone, now);
    const { inoculatedOn, secondLife, judgedOn, inspectedOn, colonisedOn, pinsOn, pickedOn } = batch;
    const lines = dueOfBatch({
      ...{ today, container, inoculatedOn, secondLife, judgedOn, inspectedOn, colonisedOn, pinsOn, pickedOn },
      enteredOn,
      liveUnits: emptied.has(id) ? 0 : 1,
      expected: expectedDaysOf(batch),
      own: own(batch),
    });
    return lines.flatMap((due) => {
      const urgency = urgencyOn(due, today, enteredOn);
      if (urgency === null) return [];
      return [
        {
          ...({ of: 'batch', batchId: id, urgency, siteId, siteName, timeZone, today } as const),
          ...{ code, container, speciesEn, speciesEs, due, enteredOn },
          dayNumber: daysBetween(inoculatedOn, today),
        },
      ];
    });
  });
}
