import type { CalendarDate } from './calendar-date';

/** Quarters of the year from December, so that each holds months of one season: '1' December to February. */
export const quarters = ['1', '2', '3', '4'] as const;
export type Quarter = (typeof quarters)[number];

/** The quarter that a day lies in. */
export function quarterOf(date: CalendarDate): Quarter {
  const index = Math.floor((Number(date.slice(5, 7)) % 12) / 3);
  return quarters[index] ?? '1';
}
