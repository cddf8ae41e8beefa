import { addDays } from '../calendar-date';
import { quietDays } from '../quiet-days';
import type { BatchDue, BatchFacts } from './batch-facts';

/** Days in which a harvest that came late may still be written down. Common practice. */
const latestHarvestDays = 14;

/**
 * A batch of which nothing was written for a long time: close it? Not while something is still expected of it, such as
 * the first fruit of logs.
 */
export function goneQuiet(batch: BatchFacts, awaited: BatchDue | null): BatchDue | null {
  const from = addDays(batch.enteredOn, quietDays(batch.container));
  if (from > batch.today) return null;
  if (awaited !== null && batch.today <= addDays(awaited.to, latestHarvestDays)) return null;
  return { kind: 'quiet', from, to: addDays(from, quietDays(batch.container)), own: null };
}
