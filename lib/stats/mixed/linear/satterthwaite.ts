import { COSTLY_TAIL } from '../costly-tail';
import { bilinear, dotProduct, inverseOfFactor } from '../linear-algebra/small-matrix';
import { positiveFactor } from '../optimise/positive-factor';
import type { RandomSystem } from '../random-system';
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
 * J Stat Softw 82(13) (both from memory). First derivatives are exact.
 *
 * @param curvature the Hessian: 'exact' by central differences of first derivatives, two factorisations a term; 'average' the
 *   average information, which it tends to as levels grow (the default where a factorisation is costly: levels are many there).
 */
export function satterthwaite(
  fit: LinearMixedFit,
  curvature: 'exact' | 'average' = fit.model.system.plan.tailSize > COSTLY_TAIL ? 'average' : 'exact',
): DegreesOf {
  const { system, cross } = fit.model;
  const sigma = fit.residualStandardDeviation;
  const p = cross.p;
  const m = cross.observations - (fit.restricted ? p : 0);
  const active = Array.from(fit.theta.keys()).filter((k) => fit.theta[k] !== 0);
  const size = active.length + 1;
  const hessian = new Float64Array(size * size);
  const at = (theta: Float64Array) => {
    const solution = penalisedSolution(system, cross, theta);
    if (!solution) throw new Error('the model cannot be solved beside its own estimate');
    return { solution, parts: penalisedDerivatives(system, theta, solution, fit.restricted) };
  };
  const slopesAt = (theta: Float64Array) => {
    const { parts } = at(theta);
    return active.map(
      (k) => (parts.logDeterminants[k] as number) + (parts.squares[k] as number) / sigma ** 2,
    );
  };
  const { solution, parts } = at(fit.theta);
  const covariance = inverseOfFactor(solution.fixedFactor, p).map((value) => value * sigma ** 2);
  const covarianceSlopes = active.map((k) => covarianceSlope(system, solution, covariance, k, fit));
  for (const [i, k] of active.entries()) {
    const mixed = (-2 * (parts.squares[k] as number)) / sigma ** 3;
    hessian[i * size + active.length] = mixed;
    hessian[active.length * size + i] = mixed;
    if (curvature === 'average') {
      for (const [j, l] of active.entries())
        hessian[i * size + j] = (parts.information[k * fit.theta.length + l] as number) / sigma ** 2;
      continue;
    }
    const step = RELATIVE_STEP * (fit.theta[k] as number);
    const up = slopesAt(fit.theta.map((value, l) => (l === k ? value + step : value)));
    const down = slopesAt(fit.theta.map((value, l) => (l === k ? value - step : value)));
    for (let j = 0; j < active.length; j++) {
      hessian[i * size + j] = ((up[j] as number) - (down[j] as number)) / (2 * step);
    }
  }
  hessian[size * size - 1] = (4 * m) / sigma ** 2;
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < i; j++) {
      const mean = ((hessian[i * size + j] as number) + (hessian[j * size + i] as number)) / 2;
      hessian[i * size + j] = mean;
      hessian[j * size + i] = mean;
    }
  }
  covarianceSlopes.push(covariance.map((value) => (2 * value) / sigma));
  const spread = inverseOfFactor(positiveFactor(hessian, size).factor, size);
  return (c) => {
    const variance = bilinear(covariance, c, c);
    const slope = Float64Array.from(covarianceSlopes, (matrix) => bilinear(matrix, c, c));
    return variance ** 2 / bilinear(spread, slope, slope);
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
