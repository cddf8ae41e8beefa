import { unit } from '../coefficients';
import { workingContrast } from '../design/coefficient-map';
import { dotProduct } from '../linear-algebra/small-matrix';
import type { LinearMixedFit } from './fit-linear';
import { penalisedSolution } from './penalised-solution';

/**
 * cov(beta-hat, b-hat - b): how errors in a coefficient and in a level's random effect go together, one array over the levels
 * (in the term's order) for each coefficient; undefined for coefficients that are not estimable.
 */
export function coefficientEffectCovariance(fit: LinearMixedFit, term: number): (Float64Array | undefined)[] {
  const { system, cross, map } = fit.model;
  const solution = penalisedSolution(system, cross, fit.theta);
  if (!solution) throw new Error('the model cannot be solved at its own estimate');
  const spread = solution.border.map((column) => Float64Array.from(column));
  for (const column of spread) system.backward(column);
  const p = cross.p;
  const names = fit.coefficients.length;
  return fit.coefficients.map((_, index) => {
    const c = workingContrast(map, unit(names, index));
    if (!c) return undefined;
    const weights = Float64Array.from({ length: p }, (_, i) =>
      dotProduct(c, fit.fixed.workingCovariance.subarray(i * p, (i + 1) * p)),
    );
    return Float64Array.from(system.positionOf[term] as Int32Array, (position) => {
      const scale = system.scale[position] as number;
      return -scale * weights.reduce((sum, weight, i) => sum + weight * (spread[i]?.[position] as number), 0);
    });
  });
}
