import type { OrthonormalBasis } from './orthonormal-basis';

/**
 * Maps between coefficients of X and the working coordinates b = R beta.
 *
 * A contrast l'beta is estimable when l lies in the row space of X; its value is then c'b with R'c = l over the kept
 * columns, and for every dropped column k (a combination a of the kept ones) l_k = l_kept' a.
 */
export type CoefficientMap = {
  readonly basis: Pick<OrthonormalBasis, 'rank' | 'coordinates' | 'kept' | 'dropped'>;
};

const ESTIMABLE = 1e-7;

/** The working contrast c of l, or undefined when l'beta is not estimable. */
export function workingContrast(map: CoefficientMap, l: ArrayLike<number>): Float64Array | undefined {
  const { rank, coordinates, kept, dropped } = map.basis;
  const c = new Float64Array(rank);
  for (let i = 0; i < rank; i++) {
    const column = coordinates[kept[i] as number] as Float64Array;
    let sum = l[kept[i] as number] as number;
    for (let k = 0; k < i; k++) sum -= (column[k] as number) * (c[k] as number);
    c[i] = sum / (column[i] as number);
  }
  for (const k of dropped) {
    const column = coordinates[k] as Float64Array;
    let value = 0;
    let size = Math.abs(l[k] as number);
    for (let i = 0; i < rank; i++) {
      const part = (column[i] as number) * (c[i] as number);
      value += part;
      size += Math.abs(part);
    }
    if (Math.abs(value - (l[k] as number)) > ESTIMABLE * (size + 1)) return undefined;
  }
  return c;
}

/** b = R beta of the kept columns. @param beta a coefficient of X for every kept column, in their order. */
export function workingCoefficients({ basis }: CoefficientMap, beta: ArrayLike<number>): Float64Array {
  const b = new Float64Array(basis.rank);
  for (const [at, column] of basis.kept.entries()) {
    const own = basis.coordinates[column] as Float64Array;
    for (let i = 0; i < b.length; i++) b[i] = (b[i] as number) + (beta[at] as number) * (own[i] as number);
  }
  return b;
}

/** log |det R| over the kept columns: what the REML criterion needs to be on the scale of X. */
export function logDeterminantOfBasis(map: CoefficientMap): number {
  const { coordinates, kept } = map.basis;
  return kept.reduce(
    (sum, column, i) => sum + Math.log((coordinates[column] as Float64Array)[i] as number),
    0,
  );
}
