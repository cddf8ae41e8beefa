import type { Elimination } from './elimination';
import { entryIndex } from './sparse-cholesky';

/**
 * L^-1 b of a vector b of few entries, as far as the head columns take part: solved there, and in the dense tail what is left
 * to solve for.
 */
export type Reach = {
  /** Positions of entries, ascending; from `headCount` on they lie in the tail. */
  readonly positions: Int32Array;
  readonly values: Float64Array;
  readonly headCount: number;
};

/**
 * Head columns that a few entries come into, by the elimination tree: each column hands on to the first row it has (Davis 2006,
 * Direct Methods for Sparse Linear Systems, ch. 3 and 4, from memory). The cost is that of these columns and not of the factor.
 *
 * @returns a function of positions, each once, and their values.
 */
export function sparseReach(
  plan: Elimination,
  factor: Float64Array,
): (positions: readonly number[], values: readonly number[]) => Reach {
  const { headSize, columnStart, rowOf, size } = plan;
  const diagonal = rowOf.length;
  const work = new Float64Array(size);
  const met = new Uint8Array(size);
  return (positions, values) => {
    const columns: number[] = [];
    const tails: number[] = [];
    const meet = (position: number) => {
      if (met[position] === 1) return false;
      met[position] = 1;
      (position < headSize ? columns : tails).push(position);
      return true;
    };
    for (const [at, first] of positions.entries()) {
      work[first] = values[at] as number;
      let position = first;
      while (meet(position) && position < headSize) {
        const start = columnStart[position] as number;
        if (start === columnStart[position + 1]) break;
        position = rowOf[start] as number;
      }
    }
    columns.sort((a, b) => a - b);
    for (const column of columns) {
      const value = (work[column] as number) / (factor[diagonal + column] as number);
      work[column] = value;
      for (let p = columnStart[column] as number; p < (columnStart[column + 1] as number); p++) {
        const row = rowOf[p] as number;
        meet(row);
        work[row] = (work[row] as number) - (factor[p] as number) * value;
      }
    }
    const reached = Int32Array.from([...columns, ...tails.sort((a, b) => a - b)]);
    const found = Float64Array.from(reached, (position) => work[position] as number);
    for (const position of reached) {
      work[position] = 0;
      met[position] = 0;
    }
    return { positions: reached, values: found, headCount: columns.length };
  };
}

/** b'A^-1 c of two vectors by what they reach. @param inverse A^-1 on the factor's pattern. */
export function betweenReaches(plan: Elimination, inverse: Float64Array, one: Reach, other: Reach): number {
  let sum = 0;
  for (let a = 0, b = 0; a < one.headCount && b < other.headCount; ) {
    const [p, q] = [one.positions[a] as number, other.positions[b] as number];
    if (p === q) sum += (one.values[a] as number) * (other.values[b] as number);
    if (p <= q) a += 1;
    if (q <= p) b += 1;
  }
  for (let a = one.headCount; a < one.positions.length; a++)
    for (let b = other.headCount; b < other.positions.length; b++) {
      const entry = entryIndex(plan, one.positions[a] as number, other.positions[b] as number);
      sum += (one.values[a] as number) * (other.values[b] as number) * (inverse[entry] as number);
    }
  return sum;
}
