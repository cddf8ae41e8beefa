import { type CannotCompute, cannotCompute } from './answer';

/**
 * `null` when every named number is finite and at least 0, else the answer naming the first that is not.
 * Masses, volumes, counts and lengths of the records can be zero but never negative.
 */
export function refuseNegative(named: Readonly<Record<string, number>>): CannotCompute | null {
  for (const [argument, given] of Object.entries(named)) {
    if (!Number.isFinite(given) || given < 0) {
      return cannotCompute('out-of-range', { argument, given: String(given) });
    }
  }
  return null;
}
