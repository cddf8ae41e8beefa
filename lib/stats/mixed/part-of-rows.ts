import type { RandomSystem } from './random-system';

/** Share of the levels that is kept. */
const SHARE = 0.25;
/** Multiples of the golden ratio spread over 0-1 without falling into step with any order the levels may have. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Rows for a first, cheap fit of a costly model: those of a quarter of the levels of the term that fills most of the dense tail. What is
 * left has all terms and a tail of about a quarter the size, a fortieth or less of the work.
 *
 * @param codes level of each row, by term.
 */
export function partOfRows(system: RandomSystem, codes: readonly Int32Array[]): Int32Array {
  const { headSize } = system.plan;
  const inTail = system.positionOf.map((positions) =>
    positions.reduce((sum, at) => sum + (at >= headSize ? 1 : 0), 0),
  );
  const term = inTail.indexOf(Math.max(...inTail));
  const own = codes[term] as Int32Array;
  const rows: number[] = [];
  for (let row = 0; row < own.length; row++) if (((own[row] as number) * GOLDEN) % 1 < SHARE) rows.push(row);
  return Int32Array.from(rows);
}

export function pick(values: Float64Array, rows: Int32Array): Float64Array {
  return Float64Array.from(rows, (row) => values[row] as number);
}
