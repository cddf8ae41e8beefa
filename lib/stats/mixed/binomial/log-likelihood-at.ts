import { logBinomialDensity } from '../../distribution/binomial';
import type { BinomialMixedFit } from './fit-binomial';
import { QuadratureCriterion } from './quadrature-criterion';

/**
 * -2 log-likelihood at a fit's estimates with the integral over the (single) random term taken by `points` quadrature nodes,
 * all constants counted: with 50 or more it is exact to about 1e-9, so that fits by different approximations can be compared.
 */
export function minusTwoLogLikelihoodAt(fit: BinomialMixedFit, points = 75): number {
  const criterion = new QuadratureCriterion({ ...fit.model, quadraturePoints: points });
  return criterion.value(Float64Array.of(...fit.theta, ...fit.fixed.working));
}

/** -2 log-likelihood of the saturated model (every row at its own rate): what a deviance is measured from. */
export function saturatedMinusTwoLogLikelihood(events: ArrayLike<number>, trials: ArrayLike<number>): number {
  let sum = 0;
  for (let row = 0; row < events.length; row++) {
    const n = trials[row] as number;
    const y = events[row] as number;
    sum -= 2 * logBinomialDensity(y, n, y / n);
  }
  return sum;
}
