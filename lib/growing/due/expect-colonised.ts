import { addDays } from '../calendar-date';
import type { BatchDue, BatchFacts } from './batch-facts';

/** When a batch should be grown through, by the site's own batches or else the network's days. */
export function expectColonised(batch: BatchFacts): BatchDue | null {
  const { colonisedOn, pinsOn, pickedOn, secondLife, inoculatedOn, own, expected } = batch;
  if (colonisedOn !== null || pinsOn !== null || pickedOn !== null || secondLife) return null;
  const days = own.colonised ?? expected.colonised;
  if (days === null) return null;
  const { from, to } = days;
  return {
    kind: 'colonised',
    from: addDays(inoculatedOn, from),
    to: addDays(inoculatedOn, to),
    own: own.colonised,
  };
}
