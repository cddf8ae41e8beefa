import type { Criterion } from '../optimise/criterion';

/** Step of the differences, in standard errors of the coordinate. */
const STEP = 1e-3;

/**
 * Hessian of a criterion at a minimum by central differences of its exact gradient, over the free coordinates.
 *
 * @param x the minimum; @param curvature a rough Hessian there (row-major), which sets the steps.
 * @param free the coordinates to include: those on the boundary (theta = 0) are left out.
 */
export function jointHessian(
  criterion: Criterion,
  x: Float64Array,
  curvature: Float64Array,
  free: readonly number[],
): Float64Array {
  const size = free.length;
  const hessian = new Float64Array(size * size);
  for (const [a, i] of free.entries()) {
    const steepness = curvature[i * criterion.dimension + i] as number;
    const step = steepness > 0 ? STEP * Math.sqrt(2 / steepness) : STEP;
    const gradientAt = (shift: number) => {
      criterion.value(x.map((value, k) => (k === i ? value + shift : value)));
      return criterion.derivatives().gradient;
    };
    const up = gradientAt(step);
    const down = gradientAt(-step);
    for (const [b, j] of free.entries()) {
      hessian[a * size + b] = ((up[j] as number) - (down[j] as number)) / (2 * step);
    }
  }
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((hessian[i * size + j] as number) + (hessian[j * size + i] as number)) / 2;
      hessian[i * size + j] = mean;
      hessian[j * size + i] = mean;
    }
  }
  criterion.value(x);
  return hessian;
}
