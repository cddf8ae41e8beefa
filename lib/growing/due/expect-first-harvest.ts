import { addDays } from '../calendar-date';
import { secondLifeFirstMushrooms } from '../second-life';
import type { BatchDue, BatchFacts } from './batch-facts';

/**
 * From pins to the first picking. IJA21 reports 2.8 days for oysters; to a week in cooler rooms is common practice. Beds
 * and logs fruit by the weather and keep their own calendar.
 */
export const pinsToPickDays = { from: 3, to: 7 } as const;

/** When to expect the first picking: from the pins, else by the site's own batches, else by the network's days. */
export function expectFirstHarvest(batch: BatchFacts): BatchDue | null {
  const { pickedOn, pinsOn, secondLife, inoculatedOn, container, own, expected } = batch;
  if (pickedOn !== null) return null;
  const line = (from: string, to: string, of: BatchDue['own'] = null): BatchDue => ({
    kind: 'first-harvest',
    from,
    to,
    own: of,
  });
  if (pinsOn !== null && container !== 'bed' && container !== 'log')
    return line(addDays(pinsOn, pinsToPickDays.from), addDays(pinsOn, pinsToPickDays.to));
  if (secondLife) {
    const { from, to } = secondLifeFirstMushrooms(inoculatedOn);
    return line(from, to);
  }
  const days = own.firstHarvest ?? expected.firstHarvest;
  if (days === null) return null;
  return line(addDays(inoculatedOn, days.from), addDays(inoculatedOn, days.to), own.firstHarvest);
}
