import { type CalendarDate, daysBetween } from './calendar-date';

/** Days without picking after which the next harvest is taken for a new flush, if the species says nothing. Common practice. */
export const usualFlushGapDays = 7;

/**
 * The flush number to propose for a harvest: 1 for the first; the last one again while picking goes on; one more when
 * at least `gapDays` passed since the last picking. A harvest dated before earlier ones proposes the flush of
 * the latest picking up to that day. The person can change it.
 */
export function proposeFlush(
  earlier: readonly { readonly on: CalendarDate; readonly flush: number }[],
  harvestedOn: CalendarDate,
  gapDays: number = usualFlushGapDays,
): number {
  const before = earlier.filter((harvest) => harvest.on <= harvestedOn);
  if (before.length === 0) return 1;
  const last = before.reduce((latest, harvest) =>
    harvest.on > latest.on || (harvest.on === latest.on && harvest.flush > latest.flush) ? harvest : latest,
  );
  return daysBetween(last.on, harvestedOn) >= gapDays ? last.flush + 1 : last.flush;
}
