import { addDays } from '../calendar-date';
import type { BatchDue, BatchFacts } from './batch-facts';

/**
 * The first look for contamination, from the day the network sets until the batch is judged. Nothing once anybody has
 * looked, or where no day is set. A second life is not new substrate, so nobody is asked.
 */
export function firstLook({
  expected,
  inspectedOn,
  inoculatedOn,
  judgedOn,
  secondLife,
}: BatchFacts): BatchDue | null {
  if (expected.firstLook === null || inspectedOn !== null || secondLife) return null;
  const from = addDays(inoculatedOn, expected.firstLook);
  if (judgedOn !== null && judgedOn <= from) return null;
  return { kind: 'first-look', from, to: addDays(from, 4), own: null };
}
