import type { RandomSystem } from '../random-system';

/**
 * What the data of a linear mixed model come down to: weighted cross-products of the fixed columns X (orthonormal
 * working basis), the random levels Z and the response y. Every likelihood evaluation works from these alone.
 */
export type CrossProducts = {
  readonly p: number;
  /** Z'Wx for each fixed column, by elimination position. */
  readonly zx: readonly Float64Array[];
  readonly zy: Float64Array;
  /** X'WX, row-major. */
  readonly xx: Float64Array;
  readonly xy: Float64Array;
  readonly yy: number;
  /** Observations behind the rows (aggregated rows count for all they stand for). */
  readonly observations: number;
  /** Constant part of -2 log-likelihood: -sum log(prior weight). */
  readonly weightConstant: number;
  /** Weighted sum of squares within aggregated rows, which no term can explain. */
  readonly withinSquares: number;
};

/** Z'(w * values) by position, unscaled. */
export function crossWithLevels(
  system: RandomSystem,
  weights: Float64Array,
  values: Float64Array,
): Float64Array {
  const sums = new Float64Array(system.size);
  const q = system.termCount;
  let at = 0;
  for (let row = 0; row < system.rowCount; row++) {
    const value = (weights[row] as number) * (values[row] as number);
    for (let k = 0; k < q; k++) {
      const j = system.positions[at++] as number;
      sums[j] = (sums[j] as number) + value;
    }
  }
  return sums;
}

export function weightedDot(weights: Float64Array, a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (weights[i] as number) * (a[i] as number) * (b[i] as number);
  return sum;
}

/** All cross-products of a response and fixed columns; `constants` as in `CrossProducts`. */
export function crossProducts(
  system: RandomSystem,
  columns: readonly Float64Array[],
  response: Float64Array,
  weights: Float64Array,
  constants: Pick<CrossProducts, 'observations' | 'weightConstant' | 'withinSquares'>,
): CrossProducts {
  const p = columns.length;
  const xx = new Float64Array(p * p);
  for (const [i, a] of columns.entries()) {
    for (let j = 0; j <= i; j++) {
      const value = weightedDot(weights, a, columns[j] as Float64Array);
      xx[i * p + j] = value;
      xx[j * p + i] = value;
    }
  }
  return {
    p,
    zx: columns.map((column) => crossWithLevels(system, weights, column)),
    zy: crossWithLevels(system, weights, response),
    xx,
    xy: Float64Array.from(columns, (column) => weightedDot(weights, column, response)),
    yy: weightedDot(weights, response, response),
    ...constants,
  };
}
