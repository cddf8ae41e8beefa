import { COSTLY_TAIL } from '../costly-tail';
import { inverseOfFactor } from '../linear-algebra/small-matrix';
import { positiveFactor } from '../optimise/positive-factor';
import type { LinearMixedFit } from './fit-linear';
import { penalisedDerivatives } from './penalised-derivatives';
import { type PenalisedSolution, penalisedSolution } from './penalised-solution';

export type DeviationCovariance = {
  /** Terms that vary; with theta at 0 nothing changes to first order. */
  readonly active: readonly number[];
  /** Covariance of the theta of these and of sigma, which comes last. */
  readonly spread: Float64Array;
  /** The model solved at its estimate. */
  readonly solution: PenalisedSolution;
};

/**
 * How the Hessian of a criterion comes about: 'exact' by central differences of first derivatives, two factorisations a term;
 * 'average' the average information, which it tends to as levels grow (the default where a factorisation is costly: levels are
 * many there).
 */
export type DeviationCurvature = 'exact' | 'average';

const RELATIVE_STEP = 1e-4;

/**
 * Covariance of the estimated (theta, sigma) of a linear mixed model: twice the inverse Hessian of the criterion that was
 * minimised. First derivatives are exact.
 */
export function deviationCovariance(
  fit: LinearMixedFit,
  curvature: DeviationCurvature = fit.model.system.plan.tailSize > COSTLY_TAIL ? 'average' : 'exact',
): DeviationCovariance {
  const { system, cross } = fit.model;
  const sigma = fit.residualStandardDeviation;
  const m = cross.observations - (fit.restricted ? cross.p : 0);
  const active = Array.from(fit.theta.keys()).filter((k) => fit.theta[k] !== 0);
  const size = active.length + 1;
  const hessian = new Float64Array(size * size);
  const solvedAt = (theta: Float64Array) => {
    const solution = penalisedSolution(system, cross, theta);
    if (!solution) throw new Error('the model cannot be solved beside its own estimate');
    return solution;
  };
  const derivativesAt = (theta: Float64Array, solution: PenalisedSolution) =>
    penalisedDerivatives(system, theta, solution, fit.restricted);
  const slopesAt = (theta: Float64Array) => {
    const { logDeterminants, squares } = derivativesAt(theta, solvedAt(theta));
    return active.map((k) => (logDeterminants[k] as number) + (squares[k] as number) / sigma ** 2);
  };
  const solution = solvedAt(fit.theta);
  const parts = derivativesAt(fit.theta, solution);
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
  const spread = inverseOfFactor(positiveFactor(hessian, size).factor, size).map((value) => 2 * value);
  // A system holds the factor of where it was last.
  return { active, spread, solution: curvature === 'average' ? solution : solvedAt(fit.theta) };
}
