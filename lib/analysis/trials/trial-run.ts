import type { TrialDeparture } from '@/lib/growing/trial-departure';
import type { LeftOutReason } from '../shown-figure';

/** One run of the drawn list with its outcome. */
export type TrialRun = {
  readonly slotId: string;
  readonly siteId: string;
  readonly armId: string;
  /** Whether a batch was made of it. */
  readonly made: boolean;
  /** Label of the load it was treated in: batches of one load are one run. */
  readonly load: string;
  readonly units: number;
  readonly outcome:
    | {
        readonly kind: 'counted';
        /** Contaminated units of inoculated ones, or fresh grams of dry ones. */
        readonly numerator: number;
        readonly denominator: number;
      }
    | { readonly kind: 'left-out'; readonly reason: LeftOutReason }
    | { readonly kind: 'not-made' };
  readonly departures: readonly TrialDeparture[];
};

export type TrialArm = { readonly id: string; readonly label: string };

export type TrialData = {
  readonly outcome: 'contamination' | 'yield';
  /** The first is the one that the others are compared with. */
  readonly arms: readonly TrialArm[];
  readonly runs: readonly TrialRun[];
};
