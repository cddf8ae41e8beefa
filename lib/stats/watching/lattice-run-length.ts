import { requireCount } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { stepsToAbsorption } from './steps-to-absorption';

/** A change of the chart by `step` lattice points, with its probability. */
export type LatticeStep = { readonly step: number; readonly probability: number };

/** More states than this take seconds to solve. */
const MOST_STATES = 2_000;

/**
 * Average number of steps until a CUSUM on a lattice, started at 0, reaches `limit` lattice points: the first
 * element of (I - Q)^-1 1 with Q the moves among the states 0 .. limit - 1 (a move below 0 stops at 0).
 *
 * Source: Brook & Evans (1972, Biometrika 59, 539-549, from memory).
 *
 * @returns the run length, or `out-of-range` when the limit is never reached.
 * @throws ArgumentError when the limit has no states or too many, or probabilities do not sum to 1.
 */
export function latticeRunLength(steps: readonly LatticeStep[], limit: number): number | CannotCompute {
  requireCount('limit', limit);
  if (limit < 1 || limit > MOST_STATES) {
    throw new ArgumentError('limit', `must lie between 1 and ${MOST_STATES} lattice points, not ${limit}`);
  }
  const total = steps.reduce((sum, { probability }) => sum + probability, 0);
  if (!(Math.abs(total - 1) < 1e-6)) throw new ArgumentError('steps', `probabilities sum to ${total}, not 1`);
  const length = elementAt(stepsToAbsorption(transitionMatrix(steps, limit), limit), 0);
  if (!Number.isFinite(length) || length <= 0 || length > 1e14) {
    return cannotCompute(
      'out-of-range',
      'The limit is out of reach of the steps, so the chart never alarms.',
    );
  }
  return length;
}

/** Moves among the states below the limit, row after row. */
function transitionMatrix(steps: readonly LatticeStep[], states: number): Float64Array {
  const matrix = new Float64Array(states * states);
  for (let state = 0; state < states; state += 1) {
    for (const { step, probability } of steps) {
      const next = Math.max(0, state + step);
      if (next >= states) continue;
      const place = state * states + next;
      matrix[place] = elementAt(matrix, place) + probability;
    }
  }
  return matrix;
}
