import { tUpperQuantile } from '../../distribution/student-t';
import type { CannotCompute, Interval } from '../../outcome';
import { contrastOf, type FixedEstimates, notEstimable } from '../coefficients';
import type { CodedTerms } from '../design/prepare-terms';
import { factorIndex, meanContrast } from './mean-contrast';

/** A fitted model as far as means and contrasts of its fixed part need it. */
export type MeansSource = {
  readonly terms: CodedTerms;
  readonly fixed: FixedEstimates;
  /** Degrees of freedom of a working contrast; Infinity for normal limits. */
  readonly degreesOf: (c: Float64Array) => number;
  /** Why a contrast is not estimable, when there is more to say than that. */
  readonly whyNot?: (label: string) => CannotCompute;
};

/** The adjusted mean at one level of a factor, on the scale the model is linear in (the logit for a binomial one). */
export type MarginalMean =
  | {
      readonly kind: 'estimate';
      readonly level: string;
      readonly estimate: number;
      readonly standardError: number;
      readonly degreesOfFreedom: number;
      readonly interval: Interval;
      readonly method: string;
    }
  | (CannotCompute & { readonly level: string });

/**
 * Adjusted means of a factor's levels: each is what the model expects if every level had been used alike over the levels
 * of the other factors (sites, when they are a fixed factor), with covariates at their means and random effects at 0.
 * A level that meets no data with some combination it is averaged over is answered by a reason.
 *
 * @param level confidence, 0.95 by default.
 */
export function marginalMeans(source: MeansSource, factor: string, level = 0.95): MarginalMean[] {
  const levels = source.terms.fixed.factors[factorIndex(source.terms, factor)]?.levels ?? [];
  return levels.map((label, index) => {
    const found = contrastOf(source.fixed, meanContrast(source.terms, factor, index));
    if (!found) return { ...(source.whyNot ?? notEstimable)(`${factor} ${label}`), level: label };
    const degreesOfFreedom = source.degreesOf(found.c);
    const reach = tUpperQuantile((1 - level) / 2, degreesOfFreedom) * found.standardError;
    return {
      kind: 'estimate',
      level: label,
      estimate: found.estimate,
      standardError: found.standardError,
      degreesOfFreedom,
      interval: {
        kind: 'interval',
        low: found.estimate - reach,
        high: found.estimate + reach,
        level,
        method: Number.isFinite(degreesOfFreedom) ? 't' : 'normal',
      },
      method: 'least-squares mean',
    };
  });
}
