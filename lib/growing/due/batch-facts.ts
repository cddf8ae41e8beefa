import type { CalendarDate } from '../calendar-date';
import type { ExpectedDays } from '../expected-days';
import type { DayRange } from '../species-default';
import type { ContainerKind } from '../vocabulary';

/** What a site's own batches took, whole days from inoculation: of the last `batches` of them, the fastest and slowest. */
export type OwnDays = DayRange & { readonly batches: number; readonly median: number };

/** An open batch as the rules of what is due see it; every date by the calendar of its site. */
export type BatchFacts = {
  readonly today: CalendarDate;
  readonly container: ContainerKind;
  readonly inoculatedOn: CalendarDate;
  readonly secondLife: boolean;
  /** Units neither gone, lost nor moved on. */
  readonly liveUnits: number;
  /** Day from which contamination is judged, by the window of its species and container. */
  readonly judgedOn: CalendarDate | null;
  /** Last time all living units were looked at, with or without a finding. */
  readonly inspectedOn: CalendarDate | null;
  readonly colonisedOn: CalendarDate | null;
  readonly pinsOn: CalendarDate | null;
  readonly pickedOn: CalendarDate | null;
  /** Last entry of any kind; the day of inoculation when there is none. */
  readonly enteredOn: CalendarDate;
  readonly expected: ExpectedDays;
  /** What this site's own batches of the species and container took; null until there are enough. */
  readonly own: { readonly colonised: OwnDays | null; readonly firstHarvest: OwnDays | null };
};

export type BatchDueKind =
  | 'first-look'
  | 'window-look'
  | 'colonised'
  | 'pins'
  | 'first-harvest'
  | 'next-flush'
  | 'quiet'
  | 'none-left';

/** Something to do with a batch, from a day and until a day; after that it is overdue. */
export type BatchDue = {
  readonly kind: BatchDueKind;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Where the days come from the site's own batches. */
  readonly own: OwnDays | null;
};
