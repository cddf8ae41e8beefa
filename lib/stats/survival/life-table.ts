import type { FollowUp } from './follow-up';

/** One distinct time of events or of ended watching. */
export type LifeTableRow = {
  readonly time: number;
  /** Units still watched just before this time; one censored at this time is still at risk. */
  readonly atRisk: number;
  /** Events of each cause, in the order of `LifeTable.causes`. */
  readonly events: readonly number[];
  readonly allEvents: number;
  readonly censored: number;
};

export type LifeTable = {
  readonly causes: readonly string[];
  readonly rows: readonly LifeTableRow[];
  readonly units: number;
};

/**
 * Counts at every distinct time, ascending. Rows with a count of 0 add nothing.
 *
 * @param causes names of the causes; causes not listed are an ArgumentError of the caller, so pass `causesOf`.
 */
export function lifeTable(followUps: readonly FollowUp[], causes: readonly string[]): LifeTable {
  const place = new Map(causes.map((cause, index) => [cause, index]));
  const byTime = new Map<number, { events: number[]; censored: number }>();
  let units = 0;
  for (const { time, cause, count = 1 } of followUps) {
    if (count === 0) continue;
    units += count;
    const row = byTime.get(time) ?? { events: causes.map(() => 0), censored: 0 };
    byTime.set(time, row);
    const index = cause === null ? undefined : place.get(cause);
    if (index === undefined) row.censored += count;
    else row.events[index] = (row.events[index] ?? 0) + count;
  }
  let atRisk = units;
  const rows = [...byTime]
    .sort(([one], [other]) => one - other)
    .map(([time, { events, censored }]): LifeTableRow => {
      const allEvents = events.reduce((sum, count) => sum + count, 0);
      const row = { time, atRisk, events, allEvents, censored };
      atRisk -= allEvents + censored;
      return row;
    });
  return { causes, rows, units };
}

/** The causes that occur, in alphabetical order. */
export function causesOf(followUps: readonly FollowUp[]): string[] {
  const causes = new Set<string>();
  for (const { cause } of followUps) if (cause !== null) causes.add(cause);
  return [...causes].sort();
}

/** The same follow-ups with all causes taken as one. */
export function anyCause(followUps: readonly FollowUp[]): FollowUp[] {
  return followUps.map((followUp) => ({ ...followUp, cause: followUp.cause === null ? null : 'any' }));
}
