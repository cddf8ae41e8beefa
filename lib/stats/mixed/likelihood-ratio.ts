import { chiSquareSurvival } from '../distribution/chi-square';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';

/** A fit as far as its likelihood is concerned. */
export type LikelihoodSource = {
  readonly minusTwoLogLikelihood: number;
  readonly parameters: number;
  readonly observations: number;
  /** True under REML, whose likelihood depends on the fixed part's design. */
  readonly restricted?: boolean;
  readonly coefficients: readonly { readonly name: string }[];
};

export type LikelihoodRatioTest = {
  readonly kind: 'estimate';
  readonly method: 'likelihood-ratio test';
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly pValue: number;
  /**
   * Half of `pValue` (a half-and-half mixture of 0 and chi-square with 1 df) for the test of one variance being 0,
   * which lies on the boundary (Self & Liang 1987, JASA 82, 605-610, from memory); with more variances it is unknown.
   */
  readonly boundaryPValue: number | undefined;
};

/**
 * Compares two nested models fitted to the same rows: -2 log of the ratio of their likelihoods against a chi-square.
 *
 * @param smaller the model with fewer parameters.
 * @param testsVariance whether the models differ in random terms only.
 * @throws ArgumentError when the models cannot be nested (other rows, or not fewer parameters).
 */
export function likelihoodRatioTest(
  smaller: LikelihoodSource,
  larger: LikelihoodSource,
  testsVariance = false,
): LikelihoodRatioTest | CannotCompute {
  if (smaller.observations !== larger.observations) {
    throw new ArgumentError('smaller', 'is fitted to other observations than the larger model');
  }
  const degreesOfFreedom = larger.parameters - smaller.parameters;
  if (degreesOfFreedom <= 0)
    throw new ArgumentError('smaller', 'has no fewer parameters than the larger model');
  const names = (fit: LikelihoodSource) => fit.coefficients.map(({ name }) => name).join('\n');
  if ((smaller.restricted || larger.restricted) && names(smaller) !== names(larger)) {
    return cannotCompute(
      'not-identifiable',
      'Restricted likelihoods of models with different fixed parts are not comparable; fit both by ML.',
    );
  }
  const statistic = Math.max(smaller.minusTwoLogLikelihood - larger.minusTwoLogLikelihood, 0);
  const pValue = chiSquareSurvival(statistic, degreesOfFreedom);
  return {
    kind: 'estimate',
    method: 'likelihood-ratio test',
    statistic,
    degreesOfFreedom,
    pValue,
    boundaryPValue: testsVariance && degreesOfFreedom === 1 ? pValue / 2 : undefined,
  };
}
