import type { ContainerKind, TrimState } from './vocabulary';

/** An open batch with what an entry about it needs to know; masses in grams. */
export type OpenBatch = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly speciesEn: string;
  readonly speciesEs: string;
  readonly container: ContainerKind;
  readonly inoculatedOn: string;
  /** Units neither gone, lost nor moved on. */
  readonly liveUnits: number;
  readonly unitCount: number;
  /** Flush of the last weighing and its day; the higher flush of a day with two. */
  readonly lastFlush: number | null;
  readonly lastPickedOn: string | null;
  /** Days without picking that begin a new flush; null: the usual ones. */
  readonly flushGapDays: number | null;
  readonly trimDefault: TrimState;
  readonly colonised: boolean;
  readonly pinsSeen: boolean;
  readonly dryGrams: number | null;
  readonly pickedGrams: number;
};

/** A treatment that is running now, for readings made with no signal. */
export type OpenRun = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  readonly methodEn: string;
  readonly methodEs: string;
  readonly startedAt: string;
};
