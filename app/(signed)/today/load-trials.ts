import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { listNextRuns, type NextRun } from '@/lib/records/trial/list-next-runs.query';
import { listTrialsBehind, type TrialBehind } from '@/lib/records/trial/list-trials-behind.query';

/** So many days ahead a drawn run is told: long enough to soak and to fetch spawn. */
const daysAhead = 7;

/** What the page of the day says of trials: to who grows, the own runs that come; to who coordinates, what is behind. */
export async function loadTrials(
  context: ReadContext,
  now: Date,
): Promise<{ readonly runs: readonly NextRun[]; readonly behind: readonly TrialBehind[] }> {
  const { role, networkTimeZone } = context.actor;
  if (role === 'coordinator') return { runs: [], behind: await listTrialsBehind(context, now) };
  const last = addDays(todayInZone(networkTimeZone, now), daysAhead);
  return { runs: (await listNextRuns(context)).filter(({ plannedOn }) => plannedOn <= last), behind: [] };
}
