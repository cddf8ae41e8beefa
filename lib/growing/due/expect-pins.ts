import { addDays } from '../calendar-date';
import type { BatchDue, BatchFacts } from './batch-facts';

/** When to look for pins. */
export function expectPins(batch: BatchFacts): BatchDue | null {
  const { pinsOn, pickedOn, secondLife, inoculatedOn, expected } = batch;
  if (pinsOn !== null || pickedOn !== null || secondLife || expected.pins === null) return null;
  const { from, to } = expected.pins;
  return { kind: 'pins', from: addDays(inoculatedOn, from), to: addDays(inoculatedOn, to), own: null };
}
