import { factorDense, solveLower, solveUpper } from './dense-cholesky';

/** Cholesky factor of a small symmetric positive definite matrix (row-major copy), or undefined. */
export function choleskyOf(matrix: Float64Array, size: number): Float64Array | undefined {
  const factor = Float64Array.from(matrix);
  return factorDense(factor, 0, size) ? factor : undefined;
}

/** Solves A x = b in place, A given by its factor. */
export function solveWithFactor(factor: Float64Array, size: number, x: Float64Array): void {
  solveLower(factor, 0, size, x);
  solveUpper(factor, 0, size, x);
}

/** The inverse of a symmetric positive definite matrix given by its factor, both triangles filled. */
export function inverseOfFactor(factor: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  const column = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    column.fill(0);
    column[j] = 1;
    solveWithFactor(factor, size, column);
    for (let i = 0; i < size; i++) inverse[i * size + j] = column[i] as number;
  }
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((inverse[i * size + j] as number) + (inverse[j * size + i] as number)) / 2;
      inverse[i * size + j] = mean;
      inverse[j * size + i] = mean;
    }
  }
  return inverse;
}

export function dotProduct(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** a' M b for a row-major square matrix. */
export function bilinear(matrix: Float64Array, a: ArrayLike<number>, b: ArrayLike<number>): number {
  const size = a.length;
  let total = 0;
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += (matrix[i * size + j] as number) * (b[j] as number);
    total += (a[i] as number) * sum;
  }
  return total;
}
