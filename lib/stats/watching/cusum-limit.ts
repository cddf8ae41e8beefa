import { requirePositive } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';
import { type CusumSetting, cusumLatticeSteps, type TypicalBatch } from './cusum-run-length';
import { latticeRunLength } from './lattice-run-length';

export type CusumLimit = {
  readonly kind: 'limit';
  readonly limit: number;
  /** Average number of steps between false alarms at this limit, at least the one asked for. */
  readonly runLength: number;
};

/** The limits tried, in lattice points: beyond this an alarm would come too late to be of use. */
const LARGEST_LIMIT = 800;

/**
 * The lowest limit (a multiple of 1 / scale) at which the average run length is at least `targetRunLength` steps.
 * With `trueOdds` 1 that is the mean number of batches between false alarms.
 *
 * @returns the limit and its run length, or `out-of-range` when no limit up to 800 / scale is high enough.
 */
export function cusumLimit(
  batches: readonly TypicalBatch[],
  targetRunLength: number,
  setting: CusumSetting,
): CusumLimit | CannotCompute {
  requirePositive('targetRunLength', targetRunLength);
  const steps = cusumLatticeSteps(batches, setting);
  // A limit that is never reached has an endless run length.
  const runLength = (points: number) => {
    const length = latticeRunLength(steps, points);
    return typeof length === 'number' ? length : Number.POSITIVE_INFINITY;
  };
  let enough = 1;
  let tooLow = 0;
  while (runLength(enough) < targetRunLength) {
    tooLow = enough;
    enough *= 2;
    if (enough > LARGEST_LIMIT) {
      return cannotCompute(
        'out-of-range',
        'No limit in reach keeps false alarms that rare; ask for a shorter run.',
      );
    }
  }
  while (enough - tooLow > 1) {
    const middle = Math.floor((tooLow + enough) / 2);
    if (runLength(middle) >= targetRunLength) enough = middle;
    else tooLow = middle;
  }
  return { kind: 'limit', limit: enough / setting.scale, runLength: runLength(enough) };
}
