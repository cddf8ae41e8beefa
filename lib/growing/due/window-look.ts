import { addDays } from '../calendar-date';
import type { BatchDue, BatchFacts } from './batch-facts';

/** Days to look in before it counts as overdue. Common practice: within the week. */
const daysToLook = 6;

/** The look that decides: without one on or after the day a batch is judged, its contamination is not known. */
export function windowLook({ judgedOn, inspectedOn }: BatchFacts): BatchDue | null {
  if (judgedOn === null || (inspectedOn !== null && inspectedOn >= judgedOn)) return null;
  return { kind: 'window-look', from: judgedOn, to: addDays(judgedOn, daysToLook), own: null };
}
