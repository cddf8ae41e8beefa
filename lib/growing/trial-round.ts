import { addDays, type CalendarDate } from './calendar-date';

type Rounds = {
  /** The first day that was planned; a trial that starts later begins on the day it starts. */
  readonly startsOn: CalendarDate;
  readonly daysBetweenBlocks: number;
  /** The day on which it starts, or today as long as it has not. */
  readonly today: CalendarDate;
};

/** The day of a round, counted from 1: every round begins so many days after the one before. */
export function roundOn({ startsOn, daysBetweenBlocks, today }: Rounds, round: number): CalendarDate {
  return addDays(startsOn < today ? today : startsOn, (round - 1) * daysBetweenBlocks);
}
