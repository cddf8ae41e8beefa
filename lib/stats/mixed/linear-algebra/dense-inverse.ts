import { subtractProducts } from './subtract-products';

const BLOCK = 96;
const STRIP = 8;

/**
 * Lower triangle of the inverse of a matrix given by its Cholesky factor, A^-1 = L^-T L^-1.
 *
 * Both steps run along rows: first T = L^-T row by row (row i of T is column i of L^-1), then inner products of rows of T.
 *
 * @param values factor left by `factorDense`, row-major, `size` rows from `start`.
 * @param inverse receives the lower triangle of A^-1 at `target`, row-major; what lies above the diagonal is scratch.
 * @param scratch at least size * size numbers; overwritten.
 */
export function invertFromFactor(
  values: Float64Array,
  start: number,
  size: number,
  inverse: Float64Array,
  target: number,
  scratch: Float64Array,
): void {
  transposedInverse(values, start, size, scratch);
  inverse.fill(0, target, target + size * size);
  for (let i = 0; i < size; i += BLOCK) {
    const rows = Math.min(BLOCK, size - i);
    for (let j = 0; j <= i; j += BLOCK) {
      const columns = Math.min(BLOCK, size - j);
      subtractProducts(
        inverse,
        target + i * size + j,
        size,
        scratch,
        i * size + i,
        size,
        scratch,
        j * size + i,
        size,
        rows,
        columns,
        size - i,
      );
    }
  }
  for (let i = 0; i < size; i++) {
    const row = target + i * size;
    for (let j = 0; j <= i; j++) inverse[row + j] = -(inverse[row + j] as number);
  }
}

function transposedInverse(values: Float64Array, start: number, size: number, t: Float64Array): void {
  t.fill(0, 0, size * size);
  for (let i = 0; i < size; i++) t[i * size + i] = 1;
  for (let k = 0; k < size; k += BLOCK) {
    const width = Math.min(BLOCK, size - k);
    for (let i = 0; i < k; i += BLOCK) {
      subtractProducts(
        t,
        i * size + k,
        size,
        t,
        i * size + i,
        size,
        values,
        start + k * size + i,
        size,
        BLOCK,
        width,
        k - i,
      );
    }
    solveBlock(values, start, size, t, k, width);
  }
}

/** Finishes columns k .. k + width - 1 of T for all rows that reach into them, a few columns at a time. */
function solveBlock(
  values: Float64Array,
  start: number,
  size: number,
  t: Float64Array,
  k: number,
  width: number,
): void {
  for (let first = k; first < k + width; first += STRIP) {
    const end = Math.min(first + STRIP, k + width);
    // T is 0 left of its diagonal, so that rows of this block may take part in full.
    subtractProducts(
      t,
      first,
      size,
      t,
      k,
      size,
      values,
      start + first * size + k,
      size,
      first,
      end - first,
      first - k,
    );
    for (let i = 0; i < end; i++) {
      const row = i * size;
      for (let column = Math.max(i, first); column < end; column++) {
        const factorRow = start + column * size;
        let sum = t[row + column] as number;
        for (let l = Math.max(i, first); l < column; l++)
          sum -= (t[row + l] as number) * (values[factorRow + l] as number);
        t[row + column] = sum / (values[factorRow + column] as number);
      }
    }
  }
}
