import type { CalendarDate } from '@/lib/growing/calendar-date';
import type { ContainerKind } from '@/lib/growing/vocabulary';

/**
 * What the comparison needs to know of one batch, added up by the database. All masses are whole grams, all dates
 * calendar dates of the site. "By the window's end" and "by the yield day" include the day itself.
 */
export type BatchFacts = {
  readonly id: string;
  readonly siteId: string;
  readonly speciesId: string;
  readonly containerKind: ContainerKind;
  /** Null for a mix of methods and where no component is recorded. */
  readonly methodId: string | null;
  readonly mixedMethod: boolean;
  readonly mixedMaterial: boolean;
  readonly materialId: string | null;
  readonly unitCount: number;
  readonly inoculatedOn: CalendarDate;
  readonly closedOn: CalendarDate | null;
  readonly closedAsLost: boolean;
  readonly noHarvest: 'none_picked' | 'not_weighed' | null;
  readonly voided: boolean;
  readonly secondLife: boolean;
  /** The day from which contamination of the batch is judged; null where no window is set. */
  readonly contaminationAssessedOn: CalendarDate | null;
  /** The day up to which its harvests count; null where no window is set. */
  readonly yieldAssessedOn: CalendarDate | null;
  readonly dryGrams: number | null;
  readonly dryAssumed: boolean;
  readonly bedAreaCm2: number | null;
  readonly contaminatedByWindowEnd: number;
  readonly contaminatedAtAnyTime: number;
  /** Units lost for another cause that had not been found contaminated before. */
  readonly lostClean: number;
  /** The last day on which somebody looked at the batch or found something. */
  readonly lastInspectedOn: CalendarDate | null;
  readonly freshGramsByYieldDay: number;
  readonly freshGramsLater: number;
  readonly weighings: number;
  /** Of the weighings that count: some trimmed, some as picked, some split from a shared crate. */
  readonly anyTrimmed: boolean;
  readonly anyAsPicked: boolean;
  readonly anyShared: boolean;
  /** Treatment runs of all components; empty where untreated or not recorded. */
  readonly runIds: readonly string[];
  /** True where a component was treated and its run was not recorded. */
  readonly runMissing: boolean;
};

/** Today's date at each site, by site id. */
export type SiteDates = ReadonlyMap<string, CalendarDate>;
