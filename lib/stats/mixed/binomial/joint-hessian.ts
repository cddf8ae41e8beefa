/** Steps of the differences, in standard errors of the coordinate. */
const STEP = 1e-3;
const ONE_SIDED_STEP = 2e-4;

/**
 * Hessian of a criterion at a minimum by differences of its gradient, over the free coordinates: central ones, or for large data
 * one-sided ones at half the cost, which leaves standard errors good to about 4 digits.
 *
 * @param x the minimum; @param curvature a rough Hessian there (row-major), which sets the steps.
 * @param free the coordinates to include: those on the boundary (theta = 0) are left out.
 */
export function jointHessian(
  gradientOf: (x: Float64Array) => Float64Array,
  x: Float64Array,
  curvature: Float64Array,
  free: readonly number[],
  oneSided: boolean,
): Float64Array {
  const size = free.length;
  const hessian = new Float64Array(size * size);
  const gradientAt = (coordinate: number, shift: number) =>
    gradientOf(x.map((value, k) => (k === coordinate ? value + shift : value)));
  const here = oneSided ? gradientAt(0, 0) : undefined;
  for (const [a, i] of free.entries()) {
    const steepness = curvature[i * x.length + i] as number;
    const step = (oneSided ? ONE_SIDED_STEP : STEP) * (steepness > 0 ? Math.sqrt(2 / steepness) : 1);
    const up = gradientAt(i, step);
    const down = here ?? gradientAt(i, -step);
    const width = here ? step : 2 * step;
    for (const [b, j] of free.entries()) {
      hessian[a * size + b] = ((up[j] as number) - (down[j] as number)) / width;
    }
  }
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((hessian[i * size + j] as number) + (hessian[j * size + i] as number)) / 2;
      hessian[i * size + j] = mean;
      hessian[j * size + i] = mean;
    }
  }
  return hessian;
}
