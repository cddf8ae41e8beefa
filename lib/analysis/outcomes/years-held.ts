import type { CalendarDate } from '@/lib/growing/calendar-date';
import type { SplitPeriod } from './split-period';

/** From one day to another, both within. */
export type Stretch = readonly [from: CalendarDate, to: CalendarDate];

/** The calendar years that a period touches, in their order. */
export function yearsOf({ years, quarters, days }: SplitPeriod): readonly number[] {
  const starts = [...years, ...quarters, ...days.map(([start]) => start)];
  return inOrder(starts.map((start) => Number(start.slice(0, 4))));
}

/** Those of both, each once. */
export function yearsOfBoth(one: readonly number[], other: readonly number[]): readonly number[] {
  return inOrder([...one, ...other]);
}

/** Those of the first that the other has not. */
export function yearsBeyond(wanted: readonly number[], held: readonly number[]): readonly number[] {
  return wanted.filter((year) => !held.includes(year));
}

/** The same as stretches, years that follow each other together: a statement of one is read in one go. */
export function stretchesOf(years: readonly number[]): readonly Stretch[] {
  const runs: { first: number; last: number }[] = [];
  for (const year of years) {
    const latest = runs.at(-1);
    if (latest !== undefined && latest.last === year - 1) latest.last = year;
    else runs.push({ first: year, last: year });
  }
  return runs.map(({ first, last }) => [`${first}-01-01`, `${last}-12-31`]);
}

function inOrder(years: readonly number[]): readonly number[] {
  return [...new Set(years)].sort((one, other) => one - other);
}
