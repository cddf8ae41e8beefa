import { factorDense, logDeterminantDense, solveLower, solveUpper } from './dense-cholesky';
import type { Elimination } from './elimination';

/**
 * A symmetric matrix (or its factor, or the matching entries of its inverse) on the pattern of an `Elimination`:
 * entries below the diagonal of the head columns, then the head's diagonal, then the dense tail (row-major, lower triangle).
 */
export function storageLength(plan: Elimination): number {
  return plan.rowOf.length + plan.headSize + plan.tailSize * plan.tailSize;
}

/** Where the entry of two positions (either order) is stored. They must be joined by the pattern. */
export function entryIndex(plan: Elimination, one: number, other: number): number {
  const row = Math.max(one, other);
  const column = Math.min(one, other);
  const { headSize, tailSize, rowOf, columnStart } = plan;
  if (column >= headSize) {
    return rowOf.length + headSize + (row - headSize) * tailSize + (column - headSize);
  }
  if (row === column) return rowOf.length + column;
  let low = columnStart[column] as number;
  let high = (columnStart[column + 1] as number) - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rowOf[middle] as number) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The same where the two positions may not be joined: undefined then. */
export function entryBetween(plan: Elimination, one: number, other: number): number | undefined {
  const [row, column] = [Math.max(one, other), Math.min(one, other)];
  if (column >= plan.headSize || row === column) return entryIndex(plan, one, other);
  const start = plan.columnStart[column] as number;
  if (start === plan.columnStart[column + 1]) return undefined;
  const entry = entryIndex(plan, one, other);
  return plan.rowOf[entry] === row ? entry : undefined;
}

/**
 * Cholesky factor of S M S + I, S the diagonal of `scale` (by position): the head column by column, left-looking, with its
 * contributions to the tail added as it goes, then the dense tail (Davis 2006, Direct Methods for Sparse Linear Systems,
 * ch. 4, from memory).
 *
 * @returns false when a pivot is not positive.
 */
export function factorSparse(
  plan: Elimination,
  matrix: Float64Array,
  scale: Float64Array,
  factor: Float64Array,
): boolean {
  const { headSize, tailSize, columnStart, rowOf, tailStart } = plan;
  const diagonal = rowOf.length;
  const tail = diagonal + headSize;
  for (let i = 0; i < tailSize; i++) {
    const row = tail + i * tailSize;
    const si = scale[headSize + i] as number;
    for (let j = 0; j <= i; j++) {
      factor[row + j] = (matrix[row + j] as number) * si * (scale[headSize + j] as number);
    }
    factor[row + i] = (factor[row + i] as number) + 1;
  }
  const work = new Float64Array(plan.size);
  const firstUser = new Int32Array(headSize).fill(-1);
  const nextUser = new Int32Array(headSize).fill(-1);
  const pointer = new Int32Array(headSize);
  for (let s = 0; s < headSize; s++) {
    const start = columnStart[s] as number;
    const end = columnStart[s + 1] as number;
    const ss = scale[s] as number;
    for (let p = start; p < end; p++) {
      const row = rowOf[p] as number;
      work[row] = (matrix[p] as number) * ss * (scale[row] as number);
    }
    let pivot = (matrix[diagonal + s] as number) * ss * ss + 1;
    for (let j = firstUser[s] as number; j >= 0; ) {
      const following = nextUser[j] as number;
      let p = pointer[j] as number;
      const value = factor[p] as number;
      pivot -= value * value;
      const stop = columnStart[j + 1] as number;
      for (p += 1; p < stop; p++) {
        const row = rowOf[p] as number;
        work[row] = (work[row] as number) - value * (factor[p] as number);
      }
      hand(j, (pointer[j] as number) + 1);
      j = following;
    }
    if (!(pivot > 0) || pivot === Number.POSITIVE_INFINITY) return false;
    const root = Math.sqrt(pivot);
    factor[diagonal + s] = root;
    for (let p = start; p < end; p++) {
      const row = rowOf[p] as number;
      factor[p] = (work[row] as number) / root;
      work[row] = 0;
    }
    for (let p = tailStart[s] as number; p < end; p++) {
      const value = factor[p] as number;
      if (value === 0) continue;
      const row = tail + ((rowOf[p] as number) - headSize) * tailSize - headSize;
      for (let q = tailStart[s] as number; q <= p; q++) {
        const at = row + (rowOf[q] as number);
        factor[at] = (factor[at] as number) - value * (factor[q] as number);
      }
    }
    hand(s, start);
  }
  return factorDense(factor, tail, tailSize);

  /** Queues column j for the head column of its next entry. */
  function hand(j: number, at: number): void {
    pointer[j] = at;
    if (at >= (tailStart[j] as number)) return;
    const row = rowOf[at] as number;
    nextUser[j] = firstUser[row] as number;
    firstUser[row] = j;
  }
}

/** 2 log det L. */
export function logDeterminantSparse(plan: Elimination, factor: Float64Array): number {
  const diagonal = plan.rowOf.length;
  let sum = 0;
  for (let j = 0; j < plan.headSize; j++) sum += Math.log(factor[diagonal + j] as number);
  return 2 * sum + logDeterminantDense(factor, diagonal + plan.headSize, plan.tailSize);
}

/** Solves L x = b in place, by position. */
export function solveForward(plan: Elimination, factor: Float64Array, x: Float64Array): void {
  const { headSize, columnStart, rowOf } = plan;
  const diagonal = rowOf.length;
  for (let j = 0; j < headSize; j++) {
    const value = (x[j] as number) / (factor[diagonal + j] as number);
    x[j] = value;
    const end = columnStart[j + 1] as number;
    for (let p = columnStart[j] as number; p < end; p++) {
      const row = rowOf[p] as number;
      x[row] = (x[row] as number) - (factor[p] as number) * value;
    }
  }
  solveLower(factor, diagonal + headSize, plan.tailSize, x, headSize);
}

/** Solves L' x = b in place, by position. */
export function solveBackward(plan: Elimination, factor: Float64Array, x: Float64Array): void {
  const { headSize, columnStart, rowOf } = plan;
  const diagonal = rowOf.length;
  solveUpper(factor, diagonal + headSize, plan.tailSize, x, headSize);
  for (let j = headSize - 1; j >= 0; j--) {
    let sum = x[j] as number;
    const end = columnStart[j + 1] as number;
    for (let p = columnStart[j] as number; p < end; p++) {
      sum -= (factor[p] as number) * (x[rowOf[p] as number] as number);
    }
    x[j] = sum / (factor[diagonal + j] as number);
  }
}
