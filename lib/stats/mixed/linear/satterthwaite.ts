import { bilinear, inverseOfFactor } from '../linear-algebra/small-matrix';
import { positiveFactor } from '../optimise/positive-factor';
import type { LinearMixedFit } from './fit-linear';
import { penalisedDerivatives } from './penalised-derivatives';
import { type PenalisedSolution, penalisedSolution } from './penalised-solution';

/** Degrees of freedom of a working contrast c (see `workingContrast`). */
export type DegreesOf = (c: Float64Array) => number;

const RELATIVE_STEP = 1e-4;

/**
 * Satterthwaite's degrees of freedom for contrasts of a linear mixed model's coefficients:
 *   df = 2 v^2 / (g' A g),  v = Var(c'b),  g its gradient in (theta, sigma),  A the covariance of the estimated
 * (theta, sigma), twice the inverse Hessian of the criterion that was minimised.
 * Terms with zero variance take no part, as nothing changes with theta at 0 to first order. Without random
 * terms the answer is n - p exactly.
 *
 * Source: Satterthwaite (1946), Biometrics Bulletin 2, 110-114; in this form Kuznetsova, Brockhoff & Christensen (2017),
 * J Stat Softw 82(13) (both from memory). Derivatives: exact first ones, central differences of those.
 */
export function satterthwaite(fit: LinearMixedFit): DegreesOf {
  const { system, cross } = fit.model;
  const sigma = fit.residualStandardDeviation;
  const p = cross.p;
  const m = cross.observations - (fit.restricted ? p : 0);
  const active = Array.from(fit.theta.keys()).filter((k) => fit.theta[k] !== 0);
  const size = active.length + 1;
  const hessian = new Float64Array(size * size);
  const covarianceSlopes: Float64Array[] = [];
  const at = (theta: Float64Array) => {
    const solution = solve(theta);
    const parts = penalisedDerivatives(system, theta, solution, fit.restricted);
    return {
      slopes: active.map(
        (k) => (parts.logDeterminants[k] as number) + (parts.squares[k] as number) / sigma ** 2,
      ),
      squareSlopes: parts.squares,
      covariance: inverseOfFactor(solution.fixedFactor, p).map((value) => value * sigma ** 2),
    };
  };
  const solve = (theta: Float64Array): PenalisedSolution => {
    const solution = penalisedSolution(system, cross, theta);
    if (!solution) throw new Error('the model cannot be solved beside its own estimate');
    return solution;
  };
  const centre = at(fit.theta);
  for (const [i, k] of active.entries()) {
    const step = RELATIVE_STEP * (fit.theta[k] as number);
    const up = at(fit.theta.map((value, l) => (l === k ? value + step : value)));
    const down = at(fit.theta.map((value, l) => (l === k ? value - step : value)));
    for (let j = 0; j < active.length; j++) {
      hessian[i * size + j] = ((up.slopes[j] as number) - (down.slopes[j] as number)) / (2 * step);
    }
    const mixed = (-2 * (centre.squareSlopes[k] as number)) / sigma ** 3;
    hessian[i * size + active.length] = mixed;
    hessian[active.length * size + i] = mixed;
    covarianceSlopes.push(
      up.covariance.map((value, entry) => (value - (down.covariance[entry] as number)) / (2 * step)),
    );
  }
  hessian[size * size - 1] = (4 * m) / sigma ** 2;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((hessian[i * size + j] as number) + (hessian[j * size + i] as number)) / 2;
      hessian[i * size + j] = mean;
      hessian[j * size + i] = mean;
    }
  }
  covarianceSlopes.push(centre.covariance.map((value) => (2 * value) / sigma));
  const spread = inverseOfFactor(positiveFactor(hessian, size).factor, size);
  return (c) => {
    const variance = bilinear(centre.covariance, c, c);
    const slope = Float64Array.from(covarianceSlopes, (matrix) => bilinear(matrix, c, c));
    return variance ** 2 / bilinear(spread, slope, slope);
  };
}
