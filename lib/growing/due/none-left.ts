import type { BatchDue, BatchFacts } from './batch-facts';

/** No living unit is left: nothing more can come of the batch, so it is closed. */
export function noneLeft({ liveUnits, enteredOn }: BatchFacts): BatchDue | null {
  return liveUnits > 0 ? null : { kind: 'none-left', from: enteredOn, to: enteredOn, own: null };
}
