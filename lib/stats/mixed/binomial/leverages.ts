import type { RandomSystem } from '../random-system';

/**
 * z'S A^-1 S z of every row: the variance of its random part given the data, in units of sigma^2 = 1. Needs only entries of
 * A^-1 between levels that share a row, which are those `system.invert` has computed.
 */
export function leverages(system: RandomSystem): Float64Array {
  const { termCount: q, rowCount, positions, entries, inverse, scale } = system;
  const answer = new Float64Array(rowCount);
  let entry = 0;
  for (let row = 0; row < rowCount; row++) {
    let sum = 0;
    for (let a = 0; a < q; a++) {
      const one = scale[positions[row * q + a] as number] as number;
      for (let b = 0; b < a; b++) {
        const other = scale[positions[row * q + b] as number] as number;
        sum += 2 * one * other * (inverse[entries[entry++] as number] as number);
      }
      sum += one * one * (inverse[entries[entry++] as number] as number);
    }
    answer[row] = sum;
  }
  return answer;
}
