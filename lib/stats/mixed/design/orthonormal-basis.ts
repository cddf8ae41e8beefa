/** A column keeps less than this share of its length after the others are taken out: it adds nothing. */
const DEPENDENT = 1e-7;

/**
 * X = Q R over the columns of X that are linearly independent, Q with orthonormal columns.
 *
 * Models are fitted in the coordinates b = R beta, which keeps them well conditioned however the covariates are scaled.
 */
export type OrthonormalBasis = {
  readonly rank: number;
  /** Columns of Q. */
  readonly columns: readonly Float64Array[];
  /** For every column of X its coordinates in Q (rank numbers). */
  readonly coordinates: readonly Float64Array[];
  /** The columns of X that are kept, in order; the others are linear combinations of these. */
  readonly kept: readonly number[];
  readonly dropped: readonly number[];
};

/**
 * Gram-Schmidt, each column taken twice against those before it (twice is enough: Giraud, Langou & Rozloznik 2005,
 * from memory); a column that keeps less than 1e-7 of its length is dependent and is left out, as R's lm does.
 */
export function orthonormalBasis(design: readonly Float64Array[]): OrthonormalBasis {
  const columns: Float64Array[] = [];
  const coordinates: number[][] = [];
  const kept: number[] = [];
  const dropped: number[] = [];
  for (const [index, source] of design.entries()) {
    const column = Float64Array.from(source);
    const before = Math.sqrt(dot(column, column));
    const own: number[] = columns.map(() => 0);
    for (let pass = 0; pass < 2; pass++) {
      for (const [k, q] of columns.entries()) {
        const part = dot(q, column);
        own[k] = (own[k] as number) + part;
        for (let i = 0; i < column.length; i++) {
          column[i] = (column[i] as number) - part * (q[i] as number);
        }
      }
    }
    const after = Math.sqrt(dot(column, column));
    if (!(after > DEPENDENT * before)) {
      dropped.push(index);
    } else {
      for (let i = 0; i < column.length; i++) column[i] = (column[i] as number) / after;
      kept.push(index);
      columns.push(column);
      own.push(after);
    }
    coordinates.push(own);
  }
  const rank = columns.length;
  return {
    rank,
    columns,
    coordinates: coordinates.map((own) => {
      const full = new Float64Array(rank);
      full.set(own);
      return full;
    }),
    kept,
    dropped,
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
