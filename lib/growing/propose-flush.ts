import { type CalendarDate, daysBetween } from './calendar-date';

/** What was weighed from a batch before: the day and the flush it was counted to (1, 2, …). */
export type EarlierPicking = { readonly weighedOn: CalendarDate; readonly flush: number };

/** Common practice: pickings of one flush lie within a few days; a longer pause begins the next flush. */
export const usualFlushGapDays = 6;

/**
 * The flush to propose for a picking on `date`: the same one as the latest earlier picking while the pause is
 * shorter than `gapDays`, the next one after that, 1 for the first picking. A proposal only; the person decides.
 */
export function proposeFlush(
  earlier: readonly EarlierPicking[],
  date: CalendarDate,
  gapDays = usualFlushGapDays,
): number {
  let latest: EarlierPicking | undefined;
  for (const picking of earlier) {
    if (picking.weighedOn > date) continue;
    if (
      !latest ||
      picking.weighedOn > latest.weighedOn ||
      (picking.weighedOn === latest.weighedOn && picking.flush > latest.flush)
    ) {
      latest = picking;
    }
  }
  if (!latest) return 1;
  return daysBetween(latest.weighedOn, date) >= gapDays ? latest.flush + 1 : latest.flush;
}
