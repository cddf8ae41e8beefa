import { addDays, type CalendarDate } from './calendar-date';
import type { DateRange } from './expected-dates';

/** Days from moving spent units to their next mushrooms: "a few weeks", read as two to six (common practice). */
export const secondLifeFirstMushroomDays = { from: 14, to: 42 } as const;

/**
 * When to expect the first mushrooms of a second life, from the day its units were buried, mulched or laid out.
 * Common practice, an expectation and never a promise: moved on 2026-05-18, from 2026-06-01 to 2026-06-29.
 */
export function secondLifeFirstMushrooms(movedOn: CalendarDate): DateRange {
  const { from, to } = secondLifeFirstMushroomDays;
  return { from: addDays(movedOn, from), to: addDays(movedOn, to) };
}
