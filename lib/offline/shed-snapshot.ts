import type { ContainerKind } from '@/lib/growing/vocabulary';

/** An open batch as a phone needs it to take an entry with no signal. */
export type ShedBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly speciesEn: string;
  readonly speciesEs: string;
  readonly container: ContainerKind;
  readonly inoculatedOn: string;
  /** Units neither contaminated, lost nor moved on. */
  readonly liveUnits: number;
  readonly unitCount: number;
  /** Flush of the last weighing and the day it was picked, for the proposal of the next. */
  readonly lastFlush: number | null;
  readonly lastPickedOn: string | null;
  readonly flushGapDays: number | null;
  readonly trimDefault: 'trimmed' | 'as_picked';
  readonly colonised: boolean;
  readonly pinsSeen: boolean;
  /** Dry grams, for the question about an absurd mass; null where not known. */
  readonly dryGrams: number | null;
  readonly pickedGrams: number;
};

/** A line of the page of what is due, with the address of the one form it needs. */
export type ShedDue = {
  readonly text: string;
  readonly place: string;
  readonly when: string;
  readonly href: string;
  /** Instant or calendar date, by which the phone orders the lines. */
  readonly dueAt: string;
};

/** All that a phone keeps of a person's work: answered by `GET /api/shed`, stored under the person's id. */
export type ShedSnapshot = {
  readonly takenAt: string;
  readonly person: {
    readonly id: string;
    readonly name: string;
    readonly language: 'en' | 'es';
    readonly region: string;
    readonly massUnit: 'kg' | 'lb';
    readonly temperatureUnit: 'celsius' | 'fahrenheit';
  };
  readonly network: { readonly id: string; readonly name: string };
  readonly batches: readonly ShedBatch[];
  readonly runs: readonly {
    readonly id: string;
    readonly code: string;
    readonly siteId: string;
    readonly siteName: string;
    readonly timeZone: string;
    readonly methodEn: string;
    readonly methodEs: string;
    readonly startedAt: string;
  }[];
  readonly due: readonly ShedDue[];
};
