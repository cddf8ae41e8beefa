import { assessmentWindowDefaults, otherSpeciesWindow } from './assessment-window-defaults';
import { addDays, type CalendarDate } from './calendar-date';
import type { DayRange, SpeciesTiming } from './species-default';
import type { ContainerKind } from './vocabulary';

export type DateRange = { readonly from: CalendarDate; readonly to: CalendarDate };

export type ExpectedDates = {
  readonly colonised: DateRange | null;
  readonly pins: DateRange | null;
  readonly firstHarvest: DateRange;
};

function range(from: CalendarDate, days: DayRange): DateRange {
  return { from: addDays(from, days.from), to: addDays(from, days.to) };
}

/** When to expect what of a batch, from its inoculation date and its species' timing. */
export function expectedDates(inoculatedOn: CalendarDate, timing: SpeciesTiming): ExpectedDates {
  return {
    colonised: timing.colonisedDays && range(inoculatedOn, timing.colonisedDays),
    pins: timing.pinsDays && range(inoculatedOn, timing.pinsDays),
    firstHarvest: range(inoculatedOn, timing.firstHarvestDays),
  };
}

/** When to expect the next flush after the last picking; null where the species has no useful interval. */
export function nextFlushDates(lastPickedOn: CalendarDate, timing: SpeciesTiming): DateRange | null {
  return timing.betweenFlushesDays && range(lastPickedOn, timing.betweenFlushesDays);
}

/** The timing row of a species for a container kind, or null. */
export function timingFor(timing: readonly SpeciesTiming[], container: ContainerKind): SpeciesTiming | null {
  return timing.find((row) => row.containers.includes(container)) ?? null;
}

/** Default assessment window of a species and container; species without a row get the container's own. */
export function assessmentWindowFor(
  speciesCode: string,
  container: ContainerKind,
): { readonly contaminationDays: number; readonly yieldDays: number } {
  const own = assessmentWindowDefaults.find(
    (row) => row.speciesCode === speciesCode && row.container === container,
  );
  return own
    ? { contaminationDays: own.contaminationDays, yieldDays: own.yieldDays }
    : otherSpeciesWindow[container];
}
