import type { MeansSource } from '../means/marginal-means';
import { type BinomialMixedFit, separatedReason } from './fit-binomial';

/**
 * A binomial fit as the source of adjusted means (log odds) and their differences (log odds ratios), with normal limits. A
 * level without any event (or with nothing but events) is answered by its reason; comparisons of the others stand.
 */
export function binomialMeansSource(fit: BinomialMixedFit): MeansSource {
  return {
    terms: fit.model.terms,
    fixed: fit.fixed,
    degreesOf: () => Number.POSITIVE_INFINITY,
    ...(fit.model.separated ? { whyNot: separatedReason } : {}),
  };
}
