import { choleskyOf } from '../linear-algebra/small-matrix';

/**
 * Cholesky factor of a symmetric matrix, with as much added to its diagonal as it takes to be positive definite
 * (relative to each diagonal entry, so that the scale of a coordinate does not matter).
 */
export function positiveFactor(matrix: Float64Array, size: number): { factor: Float64Array; added: number } {
  let largest = 0;
  for (let i = 0; i < size; i++) largest = Math.max(largest, Math.abs(matrix[i * size + i] as number));
  if (!(largest > 0)) largest = 1;
  for (let added = 0; ; added = added === 0 ? 1e-8 : added * 10) {
    const trial = Float64Array.from(matrix);
    if (added > 0) {
      for (let i = 0; i < size; i++) {
        const own = Math.abs(trial[i * size + i] as number);
        trial[i * size + i] = (trial[i * size + i] as number) + added * Math.max(own, 1e-10 * largest);
      }
    }
    const factor = choleskyOf(trial, size);
    if (factor) return { factor, added };
    if (added > 1e12) {
      const identity = new Float64Array(size * size);
      for (let i = 0; i < size; i++) identity[i * size + i] = Math.sqrt(largest);
      return { factor: identity, added };
    }
  }
}
