import { requirePositive } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';
import { type EwmaDesign, ewmaRunLength } from './ewma-run-length';

export type EwmaWidth = {
  readonly kind: 'limit';
  /** Limits are centre -+ width standard errors. */
  readonly width: number;
  /** Average number of batches between false alarms at this width, at least the one asked for. */
  readonly runLength: number;
};

/** Widths tried, in hundredths of a standard error. */
const NARROWEST = 50;
const WIDEST = 1_000;

/**
 * The narrowest width (to 0.01) of an EWMA chart at which false alarms are on average at least `targetRunLength`
 * batches apart.
 *
 * @returns the width and its run length, or `out-of-range` when even 10 standard errors are too narrow.
 */
export function ewmaWidth(design: EwmaDesign, targetRunLength: number): EwmaWidth | CannotCompute {
  requirePositive('targetRunLength', targetRunLength);
  // Limits that are never left have an endless run length.
  const runLength = (hundredths: number) => {
    const length = ewmaRunLength(design, hundredths / 100, design.centre);
    return typeof length === 'number' ? length : Number.POSITIVE_INFINITY;
  };
  let [tooNarrow, enough] = [NARROWEST, WIDEST];
  if (runLength(enough) < targetRunLength) {
    return cannotCompute('out-of-range', 'No width keeps false alarms that rare; ask for a shorter run.');
  }
  while (enough - tooNarrow > 1) {
    const middle = Math.floor((tooNarrow + enough) / 2);
    if (runLength(middle) >= targetRunLength) enough = middle;
    else tooNarrow = middle;
  }
  return { kind: 'limit', width: enough / 100, runLength: runLength(enough) };
}
