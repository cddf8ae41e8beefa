import type { CalendarDate } from './calendar-date';
import type { Hemisphere } from './hemisphere';
import { type Quarter, quarterOf } from './quarter';

/** Seasons by the quarter of the year in which they lie in the north. */
export const seasons = { winter: '1', spring: '2', summer: '3', autumn: '4' } as const satisfies Record<
  string,
  Quarter
>;
export type Season = keyof typeof seasons;

export const seasonNames = ['winter', 'spring', 'summer', 'autumn'] as const satisfies readonly Season[];

const opposite: Readonly<Record<Quarter, Quarter>> = { '1': '3', '2': '4', '3': '1', '4': '2' };

/**
 * The season of a day at a place, as the quarter that it is in the north: '1' is winter on both halves of the earth, so that
 * batches of both can be compared by season. A place of unknown half counts as northern.
 */
export function seasonOf(date: CalendarDate, hemisphere: Hemisphere): Quarter {
  return quarterIn(quarterOf(date), hemisphere);
}

/** From a season to the quarter of the year in which a place has it, and back. */
export function quarterIn(season: Quarter, hemisphere: Hemisphere): Quarter {
  return hemisphere === 'south' ? opposite[season] : season;
}
