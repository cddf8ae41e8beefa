import type { MethodKind } from '@/lib/database/generated/enums';
import type { BatchDue } from '@/lib/growing/due/batch-facts';
import type { RunDue } from '@/lib/growing/due/run-facts';
import type { Urgency } from '@/lib/growing/due/urgency';
import type { ContainerKind } from '@/lib/growing/vocabulary';

type At = {
  readonly urgency: Urgency;
  readonly siteId: string;
  readonly siteName: string;
  readonly timeZone: string;
  /** Today by the site's calendar. */
  readonly today: string;
};

/** What a treatment run needs. */
export type RunLine = At & {
  readonly of: 'run';
  readonly runId: string;
  readonly code: string;
  readonly method: MethodKind;
  readonly due: RunDue;
};

/** What a batch needs; `dayNumber` counts from inoculation, 0 on that day. */
export type BatchLine = At & {
  readonly of: 'batch';
  readonly batchId: string;
  readonly code: string;
  readonly container: ContainerKind;
  readonly speciesEn: string;
  readonly speciesEs: string;
  readonly dayNumber: number;
  /** Last entry of any kind. */
  readonly enteredOn: string;
  readonly due: BatchDue;
};

/** One line of the page of what is due. */
export type DueLine = RunLine | BatchLine;
