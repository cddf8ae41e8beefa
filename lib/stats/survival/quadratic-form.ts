import { elementAt } from '../element-at';

/** A pivot this small against its diagonal entry means that the matrix has no inverse. */
const SINGULAR_BELOW = 1e-10;

/**
 * v' M^-1 v for a symmetric positive definite matrix, by Cholesky factors; `null` when the matrix is singular.
 *
 * @param matrix rows, square, as long as `vector`.
 */
export function quadraticForm(
  matrix: readonly (readonly number[])[],
  vector: readonly number[],
): number | null {
  const factor: number[][] = [];
  const solved: number[] = [];
  for (let row = 0; row < vector.length; row += 1) {
    const own: number[] = [];
    for (let column = 0; column <= row; column += 1) {
      let rest = elementAt(elementAt(matrix, row), column);
      const above = column === row ? own : elementAt(factor, column);
      for (let k = 0; k < column; k += 1) rest -= elementAt(own, k) * elementAt(above, k);
      if (column < row) own.push(rest / elementAt(above, column));
      else {
        if (!(rest > SINGULAR_BELOW * elementAt(elementAt(matrix, row), row))) return null;
        own.push(Math.sqrt(rest));
      }
    }
    factor.push(own);
    let right = elementAt(vector, row);
    for (let k = 0; k < row; k += 1) right -= elementAt(own, k) * elementAt(solved, k);
    solved.push(right / elementAt(own, row));
  }
  return solved.reduce((sum, value) => sum + value * value, 0);
}
