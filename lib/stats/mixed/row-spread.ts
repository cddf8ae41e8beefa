import { entryBetween } from './linear-algebra/sparse-cholesky';
import type { RandomSystem } from './random-system';

/** z'S A^-1 S z of a row that has the levels at some positions, and G'S z of each fixed column, G = A^-1 S Z'WX. */
export type RowSpread = { readonly own: number; readonly overlaps: readonly number[] };

export type SpreadOf = (positions: readonly number[]) => RowSpread;

/** Solves for each row: a pass over the whole factor. @param border L^-1 S Z'WX, a column each. */
export function spreadBySolving(system: RandomSystem, border: readonly Float64Array[]): SpreadOf {
  return (positions) => {
    if (positions.length === 0) return { own: 0, overlaps: border.map(() => 0) };
    const scaled = new Float64Array(system.size);
    for (const position of positions) scaled[position] = system.scale[position] as number;
    system.forward(scaled);
    const overlaps = border.map((column) => {
      let overlap = 0;
      for (let j = 0; j < column.length; j++) overlap += (column[j] as number) * (scaled[j] as number);
      return overlap;
    });
    return { own: scaled.reduce((sum, value) => sum + value * value, 0), overlaps };
  };
}

/**
 * Takes what a row needs from the entries of A^-1 on the factor's pattern, where all levels of any row of the data are joined,
 * and from G, both made once for all rows. A row whose levels are not joined is solved for.
 */
export function spreadByInverse(
  system: RandomSystem,
  border: readonly Float64Array[],
  solving: SpreadOf,
): SpreadOf {
  const columns = border.map((column) => {
    const solved = column.slice();
    system.backward(solved);
    return solved;
  });
  system.invert();
  const { plan, inverse, scale } = system;
  return (positions) => {
    let own = 0;
    for (const [at, one] of positions.entries())
      for (let before = 0; before <= at; before++) {
        const other = positions[before] as number;
        const entry = entryBetween(plan, one, other);
        if (entry === undefined) return solving(positions);
        const share = (scale[one] as number) * (scale[other] as number) * (inverse[entry] as number);
        own += before === at ? share : 2 * share;
      }
    const overlaps = columns.map((column) =>
      positions.reduce(
        (sum, position) => sum + (scale[position] as number) * (column[position] as number),
        0,
      ),
    );
    return { own, overlaps };
  };
}
