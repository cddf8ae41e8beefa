import { shareOut } from './share-out';

/**
 * Splits one mass among batches in proportion to their live units, in whole grams that add up exactly.
 * A crate picked from several batches is recorded so.
 *
 * @param grams whole grams, 0 or more
 * @param liveUnits live units of each batch, 0 or more; when all are 0 the mass is split evenly
 */
export function splitSharedMass(grams: number, liveUnits: readonly number[]): number[] {
  return (
    shareOut(grams, liveUnits) ??
    shareOut(
      grams,
      liveUnits.map(() => 1),
    ) ??
    []
  );
}
