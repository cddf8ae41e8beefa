import { deviationIntervals } from '../deviation-intervals';
import type { DeviationInterval } from '../variance-interval';
import type { BinomialMixedFit } from './fit-binomial';
import { profileBinomialDeviations } from './profile-binomial';

/**
 * Intervals of the standard deviations (logit scale) of a binomial mixed model. See `deviationIntervals`.
 *
 * @param level confidence, 0.95 by default.
 */
export function binomialDeviations(fit: BinomialMixedFit, level = 0.95): DeviationInterval[] {
  const deviations = fit.varianceComponents.map(({ term, standardDeviation, levels }, place) => ({
    ...{ term, estimate: standardDeviation, levels },
    standardError: fit.deviationErrors[place],
  }));
  return deviationIntervals(deviations, fit.observations, level, (places) =>
    profileBinomialDeviations(fit, level, places),
  );
}
