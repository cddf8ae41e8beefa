import { invertFromFactor } from './dense-inverse';
import type { Elimination } from './elimination';

/**
 * The entries of A^-1 on the pattern of A's Cholesky factor, and no others: the dense tail is inverted outright, then each
 * head column follows from the columns after it,
 *   S[P, j] = -S[P, P] L[P, j] / L[j, j],   S[j, j] = 1 / L[j, j]^2 - L[P, j]' S[P, j] / L[j, j],
 * P being the rows of column j (Takahashi, Fagan & Chen 1973; Erisman & Tinney 1975, from memory). The variances of all
 * random effects and the leverage of every row come from these entries.
 *
 * @param inverse receives the entries, laid out as the factor is.
 * @param scratch at least tailSize * tailSize numbers.
 */
export function selectedInverse(
  plan: Elimination,
  factor: Float64Array,
  inverse: Float64Array,
  scratch: Float64Array,
): void {
  const { headSize, tailSize, columnStart, rowOf, tailStart } = plan;
  const diagonal = rowOf.length;
  const tail = diagonal + headSize;
  invertFromFactor(factor, tail, tailSize, inverse, tail, scratch);
  const sum = new Float64Array(plan.size);
  for (let j = headSize - 1; j >= 0; j--) {
    const start = columnStart[j] as number;
    const end = columnStart[j + 1] as number;
    const middle = tailStart[j] as number;
    for (let p = start; p < end; p++) sum[rowOf[p] as number] = 0;
    for (let p = start; p < middle; p++) addHeadColumn(p, end);
    for (let p = middle; p < end; p++) {
      const value = factor[p] as number;
      const row = rowOf[p] as number;
      const at = tail + (row - headSize) * tailSize - headSize;
      let total = (sum[row] as number) + (inverse[at + row] as number) * value;
      for (let q = middle; q < p; q++) {
        const other = rowOf[q] as number;
        const entry = inverse[at + other] as number;
        total += entry * (factor[q] as number);
        sum[other] = (sum[other] as number) + entry * value;
      }
      sum[row] = total;
    }
    const root = factor[diagonal + j] as number;
    let own = 1 / root;
    for (let p = start; p < end; p++) {
      const value = -(sum[rowOf[p] as number] as number) / root;
      inverse[p] = value;
      own -= (factor[p] as number) * value;
    }
    inverse[diagonal + j] = own / root;
  }

  /** Adds the part of S[P, P] L[P, j] that stands in the (finished) head column of entry p's row. */
  function addHeadColumn(p: number, end: number): void {
    const s = rowOf[p] as number;
    const value = factor[p] as number;
    let total = (sum[s] as number) + (inverse[diagonal + s] as number) * value;
    let at = columnStart[s] as number;
    for (let q = p + 1; q < end; q++) {
      const row = rowOf[q] as number;
      while ((rowOf[at] as number) < row) at += 1;
      const entry = inverse[at] as number;
      total += entry * (factor[q] as number);
      sum[row] = (sum[row] as number) + entry * value;
    }
    sum[s] = total;
  }
}
