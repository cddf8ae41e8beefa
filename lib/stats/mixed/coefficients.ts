import { type CannotCompute, cannotCompute } from '../outcome';
import { type CoefficientMap, workingContrast } from './design/coefficient-map';
import { bilinear, dotProduct } from './linear-algebra/small-matrix';

/** One fixed coefficient. Not estimable ones carry the reason instead of a number. */
export type Coefficient = {
  readonly name: string;
  readonly estimate: number | CannotCompute;
  readonly standardError: number | CannotCompute;
};

/** The fixed part of a fit: working coefficients with their covariance (row-major), and the map to the design's own. */
export type FixedEstimates = {
  readonly map: CoefficientMap;
  readonly working: Float64Array;
  readonly workingCovariance: Float64Array;
};

/** A contrast of the coefficients with its standard error, or undefined when it is not estimable. */
export function contrastOf(
  fixed: FixedEstimates,
  l: ArrayLike<number>,
): { readonly c: Float64Array; readonly estimate: number; readonly standardError: number } | undefined {
  const c = workingContrast(fixed.map, l);
  if (!c) return undefined;
  return {
    c,
    estimate: dotProduct(c, fixed.working),
    standardError: Math.sqrt(Math.max(bilinear(fixed.workingCovariance, c, c), 0)),
  };
}

/** All coefficients by name. `whyNot` gives the reason for one that is not estimable. */
export function coefficientsOf(
  fixed: FixedEstimates,
  names: readonly string[],
  whyNot: (name: string) => CannotCompute = notEstimable,
): Coefficient[] {
  return names.map((name, index) => {
    const found = contrastOf(fixed, unit(names.length, index));
    if (!found) return { name, estimate: whyNot(name), standardError: whyNot(name) };
    return { name, estimate: found.estimate, standardError: found.standardError };
  });
}

/** Covariance matrix of the coefficients, rows and columns as `names`; undefined entries for those not estimable. */
export function covarianceOf(fixed: FixedEstimates, count: number): (number | undefined)[][] {
  const contrasts = Array.from({ length: count }, (_, index) =>
    workingContrast(fixed.map, unit(count, index)),
  );
  return contrasts.map((a) =>
    contrasts.map((b) => (a && b ? bilinear(fixed.workingCovariance, a, b) : undefined)),
  );
}

export function unit(size: number, index: number): Float64Array {
  const vector = new Float64Array(size);
  vector[index] = 1;
  return vector;
}

export function notEstimable(name: string): CannotCompute {
  return cannotCompute(
    'not-identifiable',
    `"${name}" cannot be told apart from other terms: some combination of levels has no data.`,
  );
}
