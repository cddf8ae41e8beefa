import type { ReadingPlace } from './vocabulary';

/**
 * The window a treatment is checked against. Every number can be changed by the network and is passed in to the
 * check; the defaults stand in `method-defaults.ts`. Temperatures in degrees Celsius, times in minutes or days.
 */

/** Heat held for a time: hot-water bath or steam. Time counts while the reading place is inside the window. */
export type HeatWindow = {
  readonly kind: 'heat';
  readonly place: ReadingPlace;
  readonly lowCelsius: number;
  readonly highCelsius: number;
  readonly minMinutes: number;
  /** `null`: longer does no harm that the window judges. */
  readonly maxMinutes: number | null;
  /** A fall below `lowCelsius` no longer than this does not break the hold; its minutes are not counted. */
  readonly allowedDipMinutes: number;
  /** Between readings further apart than this the temperature is not known. */
  readonly maxGapMinutes: number;
  /** The load must be at or below this before spawn goes in. */
  readonly spawnAtOrBelowCelsius: number;
};

/** High pH held for a time. The upper pH is saturation at the water's temperature plus `aboveSaturationPh`. */
export type LimeWindow = {
  readonly kind: 'lime';
  readonly minPh: number;
  readonly aboveSaturationPh: number;
  readonly minMinutes: number;
  readonly maxMinutes: number;
};

/** Submerged in cold water for days, then drained. */
export type FermentWindow = {
  readonly kind: 'ferment';
  readonly minDays: number;
  readonly maxDays: number;
};

export type TreatmentWindow = HeatWindow | LimeWindow | FermentWindow;
