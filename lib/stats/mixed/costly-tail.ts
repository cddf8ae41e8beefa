import type { Accuracy } from './optimise/best-theta';
import type { RandomSystem } from './random-system';

/**
 * Size of the dense tail (see `Elimination`) from which a factorisation takes so long that everything is arranged to need
 * few of them: the search starts from a fit to part of the data, and is not driven to the last digits.
 */
export const COSTLY_TAIL = 600;

/** Rows from which on time counts more than the last digits. */
export const MANY_ROWS = 10_000;

/** How far to drive the search: to all digits that can be had, or to a hundredth of a standard error where that is costly. */
export function accuracyFor(system: RandomSystem): Accuracy {
  if (system.plan.tailSize > COSTLY_TAIL) return { tolerance: 1e-5, noise: 1e-11 };
  return { tolerance: system.rowCount > MANY_ROWS ? 1e-10 : 1e-13 };
}

/** How far to drive a profile: each fit, as a decrease still promised, and the limit, as a share of where it is looked for. */
export type ProfileAccuracy = { readonly tolerance: number; readonly width: number };

/** @param tolerance of each fit where there are few rows. */
export function profileAccuracyFor(rows: number, tolerance: number): ProfileAccuracy {
  return rows > MANY_ROWS ? { tolerance: 1e-2, width: 1e-2 } : { tolerance, width: 1e-8 };
}
