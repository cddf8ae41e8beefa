/**
 * Log density, up to a constant, of u = log s for s = sqrt(chi-square(df) / df): df (u - (exp(2u) - 1) / 2), whose
 * top is 0 at u = 0.
 */
export function logChiSquareScaleDensity(u: number, df: number): number {
  return df * (u - Math.expm1(2 * u) / 2);
}
