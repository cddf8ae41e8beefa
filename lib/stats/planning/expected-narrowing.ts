import { requireNonNegative } from '../check-argument';

/** Two of the values, by their places. */
export type Contrast = readonly [number, number];

/**
 * The covariance that is left of several unknown values once one of them has been observed with an error of known variance:
 *   V - V e e'V / (V_ee + noise),
 * the update of a normal distribution, which does not depend on what will be seen.
 *
 * @param covariance of the values as known now, square. @param observed the place of the one that is observed.
 * @throws ArgumentError for a variance that is negative.
 */
export function narrowedCovariance(
  covariance: readonly (readonly number[])[],
  observed: number,
  noiseVariance: number,
): number[][] {
  requireNonNegative('noiseVariance', noiseVariance);
  const column = covariance.map((row) => row[observed] as number);
  const total = (column[observed] as number) + noiseVariance;
  return covariance.map((row, i) =>
    row.map((value, j) =>
      total === 0 ? value : value - ((column[i] as number) * (column[j] as number)) / total,
    ),
  );
}

/** Standard error of the difference of two of the values. */
export function contrastError(covariance: readonly (readonly number[])[], [a, b]: Contrast): number {
  const at = (i: number, j: number) => covariance[i]?.[j] as number;
  return Math.sqrt(Math.max(0, at(a, a) + at(b, b) - 2 * at(a, b)));
}
