import type { DayRange } from './species-default';

/**
 * When to expect what of a batch of one species in one container kind, as a network has set it. Whole days:
 * `firstLook`, `colonised`, `pins` and `firstHarvest` from inoculation, `betweenFlushes` from the last picking of a
 * flush. `null`: nothing is announced.
 */
export type ExpectedDays = {
  readonly firstLook: number | null;
  readonly colonised: DayRange | null;
  readonly pins: DayRange | null;
  readonly firstHarvest: DayRange | null;
  readonly betweenFlushes: DayRange | null;
};

/** For a species and container that a network knows nothing of yet. */
export const nothingExpected: ExpectedDays = {
  firstLook: null,
  colonised: null,
  pins: null,
  firstHarvest: null,
  betweenFlushes: null,
};

/**
 * The day of the first look at a batch that is judged after `contaminationDays`: the tenth, or half way where it is
 * judged sooner (common practice). Beds and logs are not looked over before they are judged.
 */
export function firstLookDays(contaminationDays: number): number {
  return Math.min(10, Math.floor(contaminationDays / 2));
}
