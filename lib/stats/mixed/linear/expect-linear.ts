import type { NewRow } from '../design/fixed-term';
import { type ExpectedTogether, expectedTogether } from '../expected-together';
import type { LinearMixedFit } from './fit-linear';
import { penalisedSolution } from './penalised-solution';
import { satterthwaite } from './satterthwaite';

/**
 * What a linear mixed model expects of each set of rows, the rows of a set jointly; see `expectedTogether`. Degrees of
 * freedom are Satterthwaite's of the fixed part.
 */
export function expectLinear(fit: LinearMixedFit, sets: readonly (readonly NewRow[])[]): ExpectedTogether[] {
  const { system, cross, terms } = fit.model;
  const degreesOf = remembered(satterthwaite(fit));
  const solution = penalisedSolution(system, cross, fit.theta);
  if (!solution) throw new Error('the model cannot be solved at its own estimate');
  return sets.map(expectedTogether(system, terms, solution.border, fit, degreesOf));
}

/** Many sites ask for the same contrast of methods. A contrast of nothing has no degrees of freedom to speak of. */
function remembered(degreesOf: (c: Float64Array) => number): (c: Float64Array) => number {
  const known = new Map<string, number>();
  return (c) => {
    if (c.every((value) => Math.abs(value) < 1e-12)) return Number.POSITIVE_INFINITY;
    const key = Array.from(c, (value) => value.toPrecision(8)).join(' ');
    const degrees = known.get(key) ?? degreesOf(c);
    known.set(key, degrees);
    return degrees;
  };
}
