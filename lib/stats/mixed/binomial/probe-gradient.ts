import type { LaplaceCriterion } from './laplace-criterion';
import { laplaceGradient } from './laplace-gradient';
import { ProbeInverse } from './probe-inverse';

/**
 * Gradients of the Laplace criterion beside its last value, for differences of them only: made without a new factorisation, from
 * probes of A^-1 that are the same at every point.
 */
export function probeGradients(criterion: LaplaceCriterion): (x: Float64Array) => Float64Array {
  const probes = new ProbeInverse(criterion.model.system);
  return (x) => {
    criterion.moveTo(x);
    return laplaceGradient(criterion, probes.at(criterion.state.weight)).gradient;
  };
}
