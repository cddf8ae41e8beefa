import type { AssessmentWindow } from '@/lib/database/generated/client';
import type { ExpectedDays } from '@/lib/growing/expected-days';
import type { DayRange } from '@/lib/growing/species-default';

/** The columns of a window that say when to expect what. */
export type ExpectedColumns = Pick<
  AssessmentWindow,
  | 'firstLookDays'
  | 'colonisedFromDays'
  | 'colonisedToDays'
  | 'pinsFromDays'
  | 'pinsToDays'
  | 'firstHarvestFromDays'
  | 'firstHarvestToDays'
  | 'betweenFlushesFromDays'
  | 'betweenFlushesToDays'
>;

const range = (from: number | null, to: number | null): DayRange | null =>
  from === null || to === null ? null : { from, to };

export function expectedDaysOf(row: ExpectedColumns): ExpectedDays {
  return {
    firstLook: row.firstLookDays,
    colonised: range(row.colonisedFromDays, row.colonisedToDays),
    pins: range(row.pinsFromDays, row.pinsToDays),
    firstHarvest: range(row.firstHarvestFromDays, row.firstHarvestToDays),
    betweenFlushes: range(row.betweenFlushesFromDays, row.betweenFlushesToDays),
  };
}

export function expectedDaysColumns(days: ExpectedDays): ExpectedColumns {
  return {
    firstLookDays: days.firstLook,
    colonisedFromDays: days.colonised?.from ?? null,
    colonisedToDays: days.colonised?.to ?? null,
    pinsFromDays: days.pins?.from ?? null,
    pinsToDays: days.pins?.to ?? null,
    firstHarvestFromDays: days.firstHarvest?.from ?? null,
    firstHarvestToDays: days.firstHarvest?.to ?? null,
    betweenFlushesFromDays: days.betweenFlushes?.from ?? null,
    betweenFlushesToDays: days.betweenFlushes?.to ?? null,
  };
}
