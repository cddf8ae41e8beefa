import { subtractProducts } from './subtract-products';

const BLOCK = 96;
const STRIP = 8;
const DEPTH = 256;

/**
 * Cholesky factor L (A = L L') of a symmetric positive definite matrix, in place, by columns of blocks.
 *
 * @param values row-major square block of `size` rows starting at `start`; only its lower triangle is read. L replaces it;
 *   what stands above the diagonal afterwards is scratch.
 * @returns false when a pivot is not positive (the matrix is not positive definite to working precision).
 */
export function factorDense(values: Float64Array, start: number, size: number): boolean {
  for (let from = 0; from < size; from += BLOCK) {
    const width = Math.min(BLOCK, size - from);
    subtractFinished(values, start, size, from, width);
    if (!factorPanel(values, start, size, from, width)) return false;
  }
  return true;
}

function subtractFinished(v: Float64Array, start: number, size: number, from: number, width: number): void {
  for (let k = 0; k < from; k += DEPTH) {
    const depth = Math.min(DEPTH, from - k);
    for (let i = from; i < size; i += BLOCK) {
      const rows = Math.min(BLOCK, size - i);
      subtractProducts(
        v,
        start + i * size + from,
        size,
        v,
        start + i * size + k,
        size,
        v,
        start + from * size + k,
        size,
        rows,
        width,
        depth,
      );
    }
  }
}

/** Factors a panel of `width` columns from the diagonal down, a few columns at a time. */
function factorPanel(v: Float64Array, start: number, size: number, from: number, width: number): boolean {
  for (let first = from; first < from + width; first += STRIP) {
    const strip = Math.min(STRIP, from + width - first);
    const below = start + first * size;
    subtractProducts(
      v,
      below + first,
      size,
      v,
      below + from,
      size,
      v,
      below + from,
      size,
      size - first,
      strip,
      first - from,
    );
    if (!factorStrip(v, start, size, first, strip)) return false;
  }
  return true;
}

function factorStrip(v: Float64Array, start: number, size: number, from: number, width: number): boolean {
  for (let i = from; i < size; i++) {
    const row = start + i * size + from;
    const last = Math.min(i - from, width - 1);
    for (let j = 0; j <= last; j++) {
      const other = start + (from + j) * size + from;
      let sum = v[row + j] as number;
      for (let k = 0; k < j; k++) sum -= (v[row + k] as number) * (v[other + k] as number);
      if (i === from + j) {
        if (!(sum > 0) || sum === Number.POSITIVE_INFINITY) return false;
        v[row + j] = Math.sqrt(sum);
      } else {
        v[row + j] = sum / (v[other + j] as number);
      }
    }
  }
  return true;
}

/** Solves L x = b in place; L as left by `factorDense`. */
export function solveLower(values: Float64Array, start: number, size: number, x: Float64Array, at = 0): void {
  for (let i = 0; i < size; i++) {
    const row = start + i * size;
    let sum = x[at + i] as number;
    for (let k = 0; k < i; k++) sum -= (values[row + k] as number) * (x[at + k] as number);
    x[at + i] = sum / (values[row + i] as number);
  }
}

/** Solves L' x = b in place; L as left by `factorDense`. */
export function solveUpper(values: Float64Array, start: number, size: number, x: Float64Array, at = 0): void {
  for (let i = size - 1; i >= 0; i--) {
    const row = start + i * size;
    const value = (x[at + i] as number) / (values[row + i] as number);
    x[at + i] = value;
    for (let k = 0; k < i; k++) x[at + k] = (x[at + k] as number) - (values[row + k] as number) * value;
  }
}

/** 2 log det L of a factor left by `factorDense`, the log determinant of the matrix itself. */
export function logDeterminantDense(values: Float64Array, start: number, size: number): number {
  let sum = 0;
  for (let i = 0; i < size; i++) sum += Math.log(values[start + i * size + i] as number);
  return 2 * sum;
}
