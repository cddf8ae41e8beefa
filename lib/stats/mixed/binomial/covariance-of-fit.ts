import { choleskyOf, inverseOfFactor } from '../linear-algebra/small-matrix';

export type CovarianceOfFit = {
  /** Of the working coefficients, p x p. */
  readonly fixed: Float64Array;
  /** Standard error of each term's standard deviation; undefined where that is 0. */
  readonly deviationErrors: readonly (number | undefined)[];
};

/**
 * Twice the inverse of the joint Hessian in (theta, beta), over the coordinates that are free; undefined where it has none.
 *
 * @param q random terms, which come first. @param p coefficients, all of them free.
 */
export function covarianceOfFit(
  hessian: Float64Array,
  free: readonly number[],
  q: number,
  p: number,
): CovarianceOfFit | undefined {
  const size = free.length;
  const factor = choleskyOf(hessian, size);
  if (!factor) return undefined;
  const covariance = inverseOfFactor(factor, size).map((value) => 2 * value);
  const first = free.filter((i) => i < q).length;
  const fixed = Float64Array.from(
    { length: p * p },
    (_, at) => covariance[(first + Math.floor(at / p)) * size + first + (at % p)] as number,
  );
  const deviationErrors = Array.from({ length: q }, (_, k) => {
    const place = free.indexOf(k);
    return place === -1 ? undefined : Math.sqrt(covariance[place * size + place] as number);
  });
  return { fixed, deviationErrors };
}
