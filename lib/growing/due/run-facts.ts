import type { TreatmentWindow } from '../treatment-window';
import type { ReadingPlace } from '../vocabulary';
import type { Urgency } from './urgency';

/** A treatment run as the rules of what is due see it; readings in the order of time, temperatures in Celsius. */
export type RunFacts = {
  readonly window: TreatmentWindow | null;
  readonly startedAt: Date;
  readonly endedAt: Date | null;
  readonly now: Date;
  readonly readings: readonly {
    readonly at: Date;
    readonly place: ReadingPlace;
    readonly celsius: number | null;
    readonly ph: number | null;
  }[];
  readonly loadCelsiusAtSpawning: number | null;
  /** Whether a batch was filled from it. */
  readonly spawned: boolean;
};

/** Something to do with a run: what the words need, how urgent, and the instant that orders the lines. */
export type RunDue = { readonly urgency: Urgency; readonly at: Date } & (
  | { readonly kind: 'lime-soaking' | 'lime-lift' | 'lime-late'; readonly from: Date; readonly by: Date }
  | {
      readonly kind: 'ferment-under' | 'ferment-ready' | 'ferment-late';
      readonly day: number;
      readonly minDays: number;
      readonly maxDays: number;
      readonly from: Date;
      readonly by: Date;
    }
  | { readonly kind: 'heat-unread'; readonly minutes: number }
  | { readonly kind: 'heat-warming' | 'heat-below'; readonly celsius: number; readonly limitCelsius: number }
  | { readonly kind: 'heat-above'; readonly celsius: number; readonly limitCelsius: number }
  | {
      readonly kind: 'heat-holding' | 'heat-confirm' | 'heat-held';
      readonly minutes: number;
      readonly minMinutes: number;
      /** When the least time is reached if it stays hot. */
      readonly doneAt: Date;
    }
  | { readonly kind: 'unfinished' }
  | {
      readonly kind: 'load-cooling' | 'load-waiting';
      readonly outAt: Date;
      readonly celsius: number | null;
      readonly limitCelsius: number | null;
    }
);
