import { elementAt } from '../element-at';
import { choleskyOf, inverseOfFactor, solveWithFactor } from '../mixed/linear-algebra/small-matrix';

/** A log-likelihood with its gradient and its Hessian (row-major). */
export type Surface = {
  readonly value: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
};

export type NewtonMaximum = {
  readonly at: Float64Array;
  readonly value: number;
  /** The inverse of minus the Hessian, row-major; undefined where that is not positive definite. */
  readonly covariance: Float64Array | undefined;
};

const MOST_STEPS = 300;

/**
 * The local maximum uphill from `start` by Newton's method, with a multiple of the identity added to minus the Hessian
 * until it is positive definite and the step goes up (Levenberg-Marquardt).
 */
export function newtonMaximum(evaluate: (at: Float64Array) => Surface, start: Float64Array): NewtonMaximum {
  const size = start.length;
  let at = Float64Array.from(start);
  let here = evaluate(at);
  let damping = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const factor = choleskyOf(damped(here.hessian, size, damping), size);
    if (factor === undefined) {
      damping = Math.max(1e-6, 8 * damping);
      continue;
    }
    const move = Float64Array.from(here.gradient);
    solveWithFactor(factor, size, move);
    const next = at.map((value, index) => value + elementAt(move, index));
    const there = evaluate(next);
    // Steps at the end change the value by rounding alone; they may go down by as much.
    if (!(there.value >= here.value - 1e-13 * Math.abs(here.value))) {
      damping = Math.max(1e-6, 8 * damping);
      if (damping > 1e20) break;
      continue;
    }
    const largest = move.reduce(
      (most, value, index) => Math.max(most, Math.abs(value) / (1 + Math.abs(elementAt(at, index)))),
      0,
    );
    at = next;
    here = there;
    if (largest < 1e-12) break;
    damping = damping > 1e-6 ? damping / 8 : 0;
  }
  const factor = choleskyOf(damped(here.hessian, size, 0), size);
  return { at, value: here.value, covariance: factor && inverseOfFactor(factor, size) };
}

function damped(hessian: Float64Array, size: number, damping: number): Float64Array {
  const matrix = hessian.map((value) => -value);
  for (let i = 0; i < size; i += 1) {
    const diagonal = elementAt(matrix, i * size + i);
    matrix[i * size + i] = diagonal + damping * Math.max(1, Math.abs(diagonal));
  }
  return matrix;
}
