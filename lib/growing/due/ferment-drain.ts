import { checkFermentation } from '../check-fermentation';
import type { FermentWindow } from '../treatment-window';
import type { RunDue, RunFacts } from './run-facts';

/** Which day of the fermentation it is, and when to drain. */
export function fermentDrain(run: RunFacts, window: FermentWindow): RunDue | null {
  if (run.endedAt !== null) return null;
  const { startedAt, now } = run;
  const check = checkFermentation({ startedAt, drainedAt: null, now, readings: [] }, window);
  if (check.kind !== 'value') return null;
  const { dayCount: day, drainFrom: from, drainBy: by } = check.value;
  const days = { day, minDays: window.minDays, maxDays: window.maxDays, from, by };
  if (now < from) return { kind: 'ferment-under', urgency: 'soon', at: from, ...days };
  if (now <= by) return { kind: 'ferment-ready', urgency: 'today', at: by, ...days };
  return { kind: 'ferment-late', urgency: 'overdue', at: by, ...days };
}
