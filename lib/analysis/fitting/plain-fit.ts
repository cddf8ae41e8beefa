import type { BinomialMixedFit } from '../../stats/mixed/binomial/fit-binomial';
import type { LinearMixedFit } from '../../stats/mixed/linear/fit-linear';

/** What a fit says, without the working data that only further computation needs. */
export type PlainFit = Pick<
  LinearMixedFit | BinomialMixedFit,
  | 'method'
  | 'observations'
  | 'coefficients'
  | 'varianceComponents'
  | 'zeroVarianceTerms'
  | 'minusTwoLogLikelihood'
  | 'parameters'
  | 'randomEffects'
  | 'fitted'
  | 'evaluations'
> & {
  /** Linear models only. */
  readonly residualStandardDeviation?: number;
  /** Binomial models only: coefficients without a finite estimate. */
  readonly separated?: readonly string[];
  /** Binomial models only: terms with so few levels that the limits of differences are too narrow. */
  readonly fewLevels?: readonly string[];
};

export function plainFit(fit: LinearMixedFit | BinomialMixedFit): PlainFit {
  return {
    method: fit.method,
    observations: fit.observations,
    coefficients: fit.coefficients,
    varianceComponents: fit.varianceComponents,
    zeroVarianceTerms: fit.zeroVarianceTerms,
    minusTwoLogLikelihood: fit.minusTwoLogLikelihood,
    parameters: fit.parameters,
    randomEffects: fit.randomEffects,
    fitted: fit.fitted,
    evaluations: fit.evaluations,
    ...('residualStandardDeviation' in fit
      ? { residualStandardDeviation: fit.residualStandardDeviation }
      : { separated: fit.separated, fewLevels: fit.fewLevels }),
  };
}
