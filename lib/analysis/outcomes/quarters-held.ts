import { addDays, type CalendarDate } from '@/lib/growing/calendar-date';
import type { SplitPeriod } from './split-period';

/** From one day to another, both within. */
export type Stretch = readonly [from: CalendarDate, to: CalendarDate];

/** Calendar quarters counted from the year 0, so that those that follow each other have numbers that do. */
export type Quarter = number;

const quarterOf = (day: CalendarDate): Quarter =>
  4 * Number(day.slice(0, 4)) + Math.floor((Number(day.slice(5, 7)) - 1) / 3);

const startOf = (quarter: Quarter): CalendarDate =>
  `${Math.floor(quarter / 4)}-${String(3 * (quarter % 4) + 1).padStart(2, '0')}-01`;

/** The quarters that a period touches, in their order. */
export function quartersOf({ years, quarters, days }: SplitPeriod): readonly Quarter[] {
  const ofYears = years.flatMap((start) => [0, 1, 2, 3].map((at) => quarterOf(start) + at));
  return inOrder([...ofYears, ...quarters.map(quarterOf), ...days.map(([start]) => quarterOf(start))]);
}

/** Those of both, each once. */
export function quartersOfBoth(one: readonly Quarter[], other: readonly Quarter[]): readonly Quarter[] {
  return inOrder([...one, ...other]);
}

/** Those of the first that the other has not. */
export function quartersBeyond(wanted: readonly Quarter[], held: readonly Quarter[]): readonly Quarter[] {
  return wanted.filter((quarter) => !held.includes(quarter));
}

/** The same as stretches, quarters that follow each other together: a statement of one is read in one go. */
export function stretchesOf(quarters: readonly Quarter[]): readonly Stretch[] {
  const runs: { first: Quarter; last: Quarter }[] = [];
  for (const quarter of quarters) {
    const latest = runs.at(-1);
    if (latest !== undefined && latest.last === quarter - 1) latest.last = quarter;
    else runs.push({ first: quarter, last: quarter });
  }
  return runs.map(({ first, last }) => [startOf(first), addDays(startOf(last + 1), -1)]);
}

function inOrder(quarters: readonly Quarter[]): readonly Quarter[] {
  return [...new Set(quarters)].sort((one, other) => one - other);
}
