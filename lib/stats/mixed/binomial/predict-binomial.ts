import { tUpperQuantile } from '../../distribution/student-t';
import type { CannotCompute, Interval } from '../../outcome';
import { contrastOf, notEstimable } from '../coefficients';
import { designRow } from '../design/design-columns';
import type { NewRow } from '../design/fixed-term';
import { rowVariances } from '../row-variance';
import { type BinomialMixedFit, separatedReason } from './fit-binomial';
import { LaplaceCriterion } from './laplace-criterion';
import { borderColumn } from './laplace-curvature';
import { logistic, marginalProbability } from './marginal-probability';

/** A probability with the log odds it comes from; the interval is made on the logit and turned into probabilities. */
export type PredictedProbability = {
  readonly logit: number;
  readonly logitStandardError: number;
  readonly probability: number;
  readonly interval: Interval;
};

/** What a binomial mixed model expects of a new row. */
export type BinomialPrediction = {
  readonly kind: 'estimate';
  readonly method: 'binomial mixed model prediction';
  /** At random effect 0: a typical site and lot. */
  readonly population: PredictedProbability;
  /** Averaged over sites, lots and whatever else is random: what a crude rate estimates. */
  readonly marginalProbability: number;
  /** With the random effects of the levels the row names; levels without data count as 0 with the term's full variance. */
  readonly group: PredictedProbability;
};

/**
 * Limits by t on the fewest levels of a term that varies, less 1, since a mean over few sites is known no better than that;
 * or the normal limits that other programs print, which are too narrow with few sites.
 */
export type LogitLimits = 't' | 'normal';

/**
 * Predicts rows given by factor levels, covariates and random levels, by name (a batch of this method at that site).
 *
 * @throws ArgumentError when a row lacks a fixed term or names an unknown level of a fixed factor.
 */
export function predictBinomial(
  fit: BinomialMixedFit,
  rows: readonly NewRow[],
  level = 0.95,
  limits: LogitLimits = 't',
): (BinomialPrediction | CannotCompute)[] {
  const { model } = fit;
  const criterion = new LaplaceCriterion(model);
  criterion.value(Float64Array.of(...fit.theta, ...fit.fixed.working));
  const solution = { border: model.columns.map((column) => borderColumn(criterion, column)) };
  const degreesOfFreedom = limits === 't' ? fewestLevels(fit) - 1 : Number.POSITIVE_INFINITY;
  const reach = tUpperQuantile((1 - level) / 2, degreesOfFreedom);
  const predicted = (logit: number, logitStandardError: number): PredictedProbability => ({
    logit,
    logitStandardError,
    probability: logistic(logit),
    interval: {
      kind: 'interval',
      low: logistic(logit - reach * logitStandardError),
      high: logistic(logit + reach * logitStandardError),
      level,
      method: `${Number.isFinite(degreesOfFreedom) ? 't' : 'normal'} on the logit`,
    },
  });
  const total = fit.varianceComponents.reduce((sum, { variance }) => sum + variance, 0);
  const spread = rowVariances(model.system, model.terms.random, solution, fit, rows.length);
  return rows.map((row) => {
    const found = contrastOf(fit.fixed, designRow(model.terms.fixed, row));
    if (!found) return (model.separated ? separatedReason : notEstimable)('this combination of levels');
    const { shift, variance } = spread(found.c, row);
    return {
      kind: 'estimate',
      method: 'binomial mixed model prediction',
      population: predicted(found.estimate, found.standardError),
      marginalProbability: marginalProbability(found.estimate, total),
      group: predicted(found.estimate + shift, Math.sqrt(variance)),
    };
  });
}

/** Levels with data of the term with the fewest, among those that vary; Infinity when none does. */
function fewestLevels({ model, theta }: BinomialMixedFit): number {
  return model.terms.random.reduce(
    (fewest, { codes }, k) => (theta[k] === 0 ? fewest : Math.min(fewest, new Set(codes).size)),
    Number.POSITIVE_INFINITY,
  );
}
