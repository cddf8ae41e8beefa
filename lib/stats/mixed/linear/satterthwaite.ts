import { bilinear, dotProduct, inverseOfFactor } from '../linear-algebra/small-matrix';
import type { RandomSystem } from '../random-system';
import { type DeviationCurvature, deviationCovariance } from './deviation-covariance';
import type { LinearMixedFit } from './fit-linear';
import type { PenalisedSolution } from './penalised-solution';

/** Degrees of freedom of a working contrast c (see `workingContrast`). */
export type DegreesOf = (c: Float64Array) => number;

/**
 * Satterthwaite's degrees of freedom for contrasts of a linear mixed model's coefficients:
 *   df = 2 v^2 / (g' A g),  v = Var(c'b),  g its gradient in (theta, sigma),  A the covariance of the estimated
 * (theta, sigma), twice the inverse Hessian of the criterion that was minimised.
 * Terms with zero variance take no part, as nothing changes with theta at 0 to first order. Without random
 * terms the answer is n - p exactly.
 *
 * Source: Satterthwaite (1946), Biometrics Bulletin 2, 110-114; in this form Kuznetsova, Brockhoff & Christensen (2017),
 * J Stat Softw 82(13) (both from memory). First derivatives are exact.
 *
 * @param curvature how A comes about.
 */
export function satterthwaite(fit: LinearMixedFit, curvature?: DeviationCurvature): DegreesOf {
  const { system, cross } = fit.model;
  const sigma = fit.residualStandardDeviation;
  const { active, spread, solution } = deviationCovariance(fit, curvature);
  const covariance = inverseOfFactor(solution.fixedFactor, cross.p).map((value) => value * sigma ** 2);
  const covarianceSlopes = [
    ...active.map((k) => covarianceSlope(system, solution, covariance, k, fit)),
    covariance.map((value) => (2 * value) / sigma),
  ];
  return (c) => {
    const variance = bilinear(covariance, c, c);
    const slope = Float64Array.from(covarianceSlopes, (matrix) => bilinear(matrix, c, c));
    return (2 * variance ** 2) / bilinear(spread, slope, slope);
  };
}

/**
 * Derivative in theta_k of C = sigma^2 (X'V^-1 X)^-1, V in units of sigma^2: C M C / sigma^2 with
 * M = X'V^-1 (dV / d theta_k) V^-1 X = (2 / theta_k) T'T, T the rows of A^-1 S Z'WX of the term's levels.
 */
function covarianceSlope(
  system: RandomSystem,
  { border }: PenalisedSolution,
  covariance: Float64Array,
  k: number,
  { theta, residualStandardDeviation: sigma }: LinearMixedFit,
): Float64Array {
  const p = border.length;
  const spread = border.map((column) => column.slice());
  for (const column of spread) system.backward(column);
  // Rows of C T'.
  const rows = spread.map((_, i) => {
    const row = new Float64Array(system.size);
    for (const j of system.positionOf[k] as Int32Array) {
      let sum = 0;
      for (let l = 0; l < p; l++) sum += (covariance[i * p + l] as number) * (spread[l]?.[j] as number);
      row[j] = sum;
    }
    return row;
  });
  const scale = 2 / ((theta[k] as number) * sigma ** 2);
  return Float64Array.from(
    { length: p * p },
    (_, at) => scale * dotProduct(rows[Math.floor(at / p)] as Float64Array, rows[at % p] as Float64Array),
  );
}
