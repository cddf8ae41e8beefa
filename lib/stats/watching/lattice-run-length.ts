import { requireCount } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';

/** A change of the chart by `step` lattice points, with its probability. */
export type LatticeStep = { readonly step: number; readonly probability: number };

/** More states than this take seconds to solve. */
const MOST_STATES = 2_000;

/**
 * Average number of steps until a CUSUM on a lattice, started at 0, reaches `limit` lattice points: the first
 * element of (I - Q)^-1 1 with Q the moves among the states 0 .. limit - 1 (a move below 0 stops at 0).
 *
 * Source: Brook & Evans (1972, Biometrika 59, 539-549, from memory). I - Q is an M-matrix, so elimination needs no
 * pivoting.
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
  const matrix = transitionComplement(steps, limit);
  const lengths = solveFromTop(matrix, limit);
  if (!Number.isFinite(lengths) || lengths <= 0 || lengths > 1e14) {
    return cannotCompute(
      'out-of-range',
      'The limit is out of reach of the steps, so the chart never alarms.',
    );
  }
  return lengths;
}

/** I - Q, row after row. */
function transitionComplement(steps: readonly LatticeStep[], states: number): Float64Array {
  const matrix = new Float64Array(states * states);
  for (let state = 0; state < states; state += 1) {
    matrix[state * states + state] = 1;
    for (const { step, probability } of steps) {
      const next = Math.max(0, state + step);
      if (next >= states) continue;
      const place = state * states + next;
      matrix[place] = elementAt(matrix, place) - probability;
    }
  }
  return matrix;
}

/**
 * First element of the solution of M x = 1, eliminating from the last state up so that the first one is left.
 * Zeros are skipped: the matrix is banded but for its first column.
 */
function solveFromTop(matrix: Float64Array, states: number): number {
  const right = new Float64Array(states).fill(1);
  for (let last = states - 1; last > 0; last -= 1) {
    const pivot = elementAt(matrix, last * states + last);
    for (let row = 0; row < last; row += 1) {
      const place = row * states + last;
      const entry = elementAt(matrix, place);
      if (entry === 0) continue;
      const factor = entry / pivot;
      right[row] = elementAt(right, row) - factor * elementAt(right, last);
      for (let column = 0; column < last; column += 1) {
        const own = row * states + column;
        matrix[own] = elementAt(matrix, own) - factor * elementAt(matrix, last * states + column);
      }
    }
  }
  return elementAt(right, 0) / elementAt(matrix, 0);
}
