import { tUpperQuantile } from '../../distribution/student-t';
import type { CannotCompute, Interval } from '../../outcome';
import { contrastOf, notEstimable } from '../coefficients';
import { designRow } from '../design/design-columns';
import type { NewRow } from '../design/fixed-term';
import { rowVariances } from '../row-variance';
import type { LinearMixedFit } from './fit-linear';
import { penalisedSolution } from './penalised-solution';
import { satterthwaite } from './satterthwaite';

/** What a linear mixed model expects of a new row. */
export type LinearPrediction = {
  readonly kind: 'estimate';
  readonly method: 'linear mixed model prediction';
  /** The fixed part alone: a level not known in any random term. */
  readonly population: {
    readonly estimate: number;
    readonly standardError: number;
    readonly interval: Interval;
  };
  /** With the random effects of the levels the row names; levels without data count as 0 with the term's full variance. */
  readonly group: { readonly estimate: number; readonly standardError: number; readonly interval: Interval };
  /** For one new observation of weight 1 there. */
  readonly observation: { readonly standardError: number; readonly interval: Interval };
};

/**
 * Predicts rows given by factor levels, covariates and random levels, by name. Intervals are t with Satterthwaite's degrees of
 * freedom of the fixed part. The variance of a group prediction is that of x'beta-hat + z'(b-hat - b), jointly.
 *
 * @throws ArgumentError when a row lacks a fixed term or names an unknown level of a fixed factor.
 */
export function predictLinear(
  fit: LinearMixedFit,
  rows: readonly NewRow[],
  level = 0.95,
): (LinearPrediction | CannotCompute)[] {
  const { model, residualStandardDeviation: sigma } = fit;
  const degreesOf = satterthwaite(fit);
  const solution = penalisedSolution(model.system, model.cross, fit.theta);
  if (!solution) throw new Error('the model cannot be solved at its own estimate');
  const spread = rowVariances(model.system, model.terms.random, solution, fit, rows.length);
  return rows.map((row) => {
    const found = contrastOf(fit.fixed, designRow(model.terms.fixed, row));
    if (!found) return notEstimable('this combination of levels');
    const { shift, variance } = spread(found.c, row);
    const reach = tUpperQuantile((1 - level) / 2, degreesOf(found.c));
    const around = (estimate: number, standardError: number): Interval => ({
      kind: 'interval',
      low: estimate - reach * standardError,
      high: estimate + reach * standardError,
      level,
      method: 't, Satterthwaite',
    });
    const group = found.estimate + shift;
    const groupError = Math.sqrt(variance);
    const observationError = Math.sqrt(variance + sigma ** 2);
    return {
      kind: 'estimate',
      method: 'linear mixed model prediction',
      population: {
        estimate: found.estimate,
        standardError: found.standardError,
        interval: around(found.estimate, found.standardError),
      },
      group: { estimate: group, standardError: groupError, interval: around(group, groupError) },
      observation: { standardError: observationError, interval: around(group, observationError) },
    };
  });
}
