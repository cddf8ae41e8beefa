import { addDays } from '../calendar-date';
import type { BatchDue, BatchFacts } from './batch-facts';

/** When to expect the next flush after the last picking; nothing where the species has no useful interval. */
export function nextFlush({ pickedOn, expected }: BatchFacts): BatchDue | null {
  if (pickedOn === null || expected.betweenFlushes === null) return null;
  const { from, to } = expected.betweenFlushes;
  return { kind: 'next-flush', from: addDays(pickedOn, from), to: addDays(pickedOn, to), own: null };
}
