import { solveLower, solveUpper } from '../linear-algebra/dense-cholesky';
import { dotProduct } from '../linear-algebra/small-matrix';
import type { RandomSystem } from '../random-system';
import { type PenalisedSolution, subtractMultiple } from './penalised-solution';

/** Derivatives, by term, of the pieces of the likelihood at a penalised solution. */
export type PenalisedDerivatives = {
  /** d log|A| / d theta_k (ML), or d (log|A| + log|X'V^-1 X|) / d theta_k (REML). */
  readonly logDeterminants: Float64Array;
  /** d r^2 / d theta_k. */
  readonly squares: Float64Array;
  /** Average information of sigma^2 * deviance in theta: 4 / (theta_i theta_j) u_i' (I - C^-1)_ij u_j, row-major. */
  readonly information: Float64Array;
};

/**
 * Exact first derivatives and the average information (Gilmour, Thompson & Cullis 1995, Biometrics 51, 1440-1450, from
 * memory), all from the inverse of A on its own pattern:
 *   d log|A| / d theta_k = (2 / theta_k) sum over the term's levels of (1 - (A^-1)_jj), and with the whole
 *   matrix C of the mixed model equations in place of A when X'V^-1 X counts as well;
 *   d r^2 / d theta_k = -(2 / theta_k) sum u_j^2.
 * At theta_k = 0 all of them are 0, since the likelihood is even in theta_k.
 */
export function penalisedDerivatives(
  system: RandomSystem,
  theta: Float64Array,
  solution: PenalisedSolution,
  restricted: boolean,
): PenalisedDerivatives {
  const q = system.termCount;
  const { u, border, fixedFactor } = solution;
  const p = border.length;
  system.invert();
  // Rows of A^-1 S Z'WX R^-1, R'R = X'V^-1 X: what the estimation of the fixed part adds to C^-1.
  const spread = border.map((column) => column.slice());
  for (const column of spread) system.backward(column);
  const row = new Float64Array(p);
  const kept = new Float64Array(q);
  const squares = new Float64Array(q);
  for (let j = 0; j < system.size; j++) {
    const k = system.termOf[j] as number;
    let variance = system.inverseDiagonal(j);
    if (restricted) {
      for (let i = 0; i < p; i++) row[i] = (spread[i] as Float64Array)[j] as number;
      solveLower(fixedFactor, 0, p, row);
      variance += dotProduct(row, row);
    }
    kept[k] = (kept[k] as number) + 1 - variance;
    squares[k] = (squares[k] as number) + (u[j] as number) ** 2;
  }
  const information = new Float64Array(q * q);
  for (let k = 0; k < q; k++) {
    const own = system.ofTerm(k, u);
    const image = own.slice();
    system.solve(image);
    if (p > 0) {
      const shift = Float64Array.from(spread, (column) => dotProduct(column, own));
      solveLower(fixedFactor, 0, p, shift);
      solveUpper(fixedFactor, 0, p, shift);
      for (let i = 0; i < p; i++) subtractMultiple(image, -(shift[i] as number), spread[i] as Float64Array);
    }
    for (let j = 0; j < system.size; j++) {
      const l = system.termOf[j] as number;
      const part = (u[j] as number) * ((own[j] as number) - (image[j] as number));
      information[k * q + l] = (information[k * q + l] as number) + part;
    }
  }
  for (let k = 0; k < q; k++) {
    for (let l = 0; l < q; l++) {
      const product = (theta[k] as number) * (theta[l] as number);
      information[k * q + l] = product === 0 ? 0 : (4 * (information[k * q + l] as number)) / product;
    }
  }
  const perTheta = (value: number, k: number) => (theta[k] === 0 ? 0 : (2 * value) / (theta[k] as number));
  return {
    logDeterminants: kept.map(perTheta),
    squares: squares.map((value, k) => -perTheta(value, k)),
    information,
  };
}
