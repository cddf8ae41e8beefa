import { elementAt } from '../element-at';
import type { FollowUp } from './follow-up';
import type { GroupCounts } from './incidence-influence';
import type { LifeTable } from './life-table';

/** What a group of follow-ups, all of them in the table, contributed to each of its rows. */
export function groupCounts(table: LifeTable, group: readonly FollowUp[]): GroupCounts {
  const rowOf = new Map(table.rows.map(({ time }, index) => [time, index]));
  const causeOf = new Map(table.causes.map((cause, index) => [cause, index]));
  const leaving = table.rows.map(() => 0);
  const events = table.rows.map(() => table.causes.map(() => 0));
  let atRisk = 0;
  for (const { time, cause, count = 1 } of group) {
    const row = rowOf.get(time);
    if (row === undefined) continue;
    atRisk += count;
    leaving[row] = elementAt(leaving, row) + count;
    const index = cause === null ? undefined : causeOf.get(cause);
    if (index === undefined) continue;
    const counts = elementAt(events, row);
    counts[index] = elementAt(counts, index) + count;
  }
  return {
    atRisk: leaving.map((count) => {
      const before = atRisk;
      atRisk -= count;
      return before;
    }),
    events,
  };
}
