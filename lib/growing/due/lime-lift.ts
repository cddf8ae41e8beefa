import { addMinutes } from '../treatment-reading';
import type { LimeWindow } from '../treatment-window';
import type { RunDue, RunFacts } from './run-facts';

const minutesPerDay = 1440;

/** When the load comes out of the lime bath: from its least to its most time. A day later somebody forgot to say so. */
export function limeLift({ startedAt, endedAt, now }: RunFacts, window: LimeWindow): RunDue | null {
  if (endedAt !== null) return null;
  const from = addMinutes(startedAt, window.minMinutes);
  const by = addMinutes(startedAt, window.maxMinutes);
  if (now > addMinutes(by, minutesPerDay)) return { kind: 'unfinished', urgency: 'overdue', at: by };
  const kind = now < from ? 'lime-soaking' : now <= by ? 'lime-lift' : 'lime-late';
  return { kind, urgency: 'now', at: kind === 'lime-soaking' ? from : by, from, by };
}
