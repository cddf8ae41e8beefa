import { factorDense, logDeterminantDense, solveLower, solveUpper } from '../linear-algebra/dense-cholesky';
import { dotProduct } from '../linear-algebra/small-matrix';
import type { RandomSystem } from '../random-system';
import type { CrossProducts } from './cross-products';

/**
 * The penalised least squares solution at one theta: b and u minimise
 *   r^2 = |W^1/2 (y - X b - Z S u)|^2 + |u|^2,
 * by block elimination of u first (Bates et al. 2015, J Stat Softw 67(1), section 3).
 */
export type PenalisedSolution = {
  /** Fixed coefficients in the working basis. */
  readonly b: Float64Array;
  /** Spherical random effects, by position. */
  readonly u: Float64Array;
  /** r^2, with the squares within aggregated rows. */
  readonly squares: number;
  /** log|A|. */
  readonly logDetRandom: number;
  /** log|X'V^-1 X| (V in units of sigma^2), in the working basis. */
  readonly logDetFixed: number;
  /** Cholesky factor of X'V^-1 X, row-major. */
  readonly fixedFactor: Float64Array;
  /** L^-1 S Z'Wx for each fixed column. */
  readonly border: readonly Float64Array[];
};

/** Solves at `theta`; undefined where the system cannot be factored. Leaves the system factored there. */
export function penalisedSolution(
  system: RandomSystem,
  cross: CrossProducts,
  theta: Float64Array,
): PenalisedSolution | undefined {
  const { p } = cross;
  system.setScale(theta);
  if (!system.refactor()) return undefined;
  const border = cross.zx.map((column) => scaledForward(system, column));
  const response = scaledForward(system, cross.zy);
  const fixedFactor = Float64Array.from(cross.xx);
  const b = Float64Array.from(cross.xy);
  for (let i = 0; i < p; i++) {
    const column = border[i] as Float64Array;
    for (let j = 0; j <= i; j++) {
      fixedFactor[i * p + j] =
        (fixedFactor[i * p + j] as number) - dotProduct(column, border[j] as Float64Array);
    }
    b[i] = (b[i] as number) - dotProduct(column, response);
  }
  if (!factorDense(fixedFactor, 0, p)) return undefined;
  solveLower(fixedFactor, 0, p, b);
  const squares = cross.yy - dotProduct(response, response) - dotProduct(b, b);
  solveUpper(fixedFactor, 0, p, b);
  const u = response;
  for (let i = 0; i < p; i++) subtractMultiple(u, b[i] as number, border[i] as Float64Array);
  system.backward(u);
  return {
    b,
    u,
    squares: Math.max(squares, 0) + cross.withinSquares,
    logDetRandom: system.logDeterminant(),
    logDetFixed: logDeterminantDense(fixedFactor, 0, p),
    fixedFactor,
    border,
  };
}

function scaledForward(system: RandomSystem, sums: Float64Array): Float64Array {
  const x = new Float64Array(sums.length);
  for (let j = 0; j < x.length; j++) x[j] = (sums[j] as number) * (system.scale[j] as number);
  system.forward(x);
  return x;
}

export function subtractMultiple(target: Float64Array, factor: number, column: Float64Array): void {
  for (let j = 0; j < target.length; j++) {
    target[j] = (target[j] as number) - factor * (column[j] as number);
  }
}
