import { findRoot } from '../find-root';
import type { SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

/** Points of the search for turning points of the likelihood, spread evenly over the logarithm of tau2. */
const SEARCH_POINTS = 240;

/**
 * Restricted maximum likelihood estimate of the between-site variance.
 *
 * The restricted log-likelihood is -1/2 (sum log(v + tau2) + log sum w + sum w (y - mean)^2), w = 1 / (v + tau2);
 * its slope is 1/2 (sum(w^2 (y - mean)^2) + sum w^2 / sum w - sum w). With very unequal variances it can have
 * several maxima: every root of the slope on a fine grid is solved and the highest taken, 0 included.
 *
 * Source: Viechtbauer (2005, J Educ Behav Stat 30, 261-293, from memory).
 */
export function restrictedLikelihood(sites: readonly SiteEstimate[]): number {
  const slope = (tau2: number) => {
    const { squaredWeightQ, sumOfSquaredWeights, sumOfWeights } = weightedMean(sites, tau2);
    return squaredWeightQ + sumOfSquaredWeights / sumOfWeights - sumOfWeights;
  };
  const loss = (tau2: number) => {
    const { q, sumOfWeights } = weightedMean(sites, tau2);
    const logs = sites.reduce((sum, { variance }) => sum + Math.log(variance + tau2), 0);
    return logs + Math.log(sumOfWeights) + q;
  };
  let best = { tau2: 0, loss: loss(0) };
  for (const [low, high] of signChanges(sites, slope)) {
    const tau2 = findRoot(slope, low, high);
    const here = loss(tau2);
    if (here < best.loss) best = { tau2, loss: here };
  }
  return best.tau2;
}

/** Intervals in which the slope turns from rising to falling, that is, around a maximum. */
function signChanges(
  sites: readonly SiteEstimate[],
  slope: (tau2: number) => number,
): [low: number, high: number][] {
  const { mean } = weightedMean(sites, 0);
  const squares = sites.reduce((sum, { estimate }) => sum + (estimate - mean) ** 2, 0);
  const smallest = Math.min(...sites.map(({ variance }) => variance));
  // Beyond the sum of squares every site pulls tau2 down.
  const highest = 10 * (squares + smallest);
  const lowest = Math.min(smallest, highest) * 1e-8;
  const intervals: [number, number][] = [];
  let before = 0;
  let rising = slope(0) > 0;
  for (let point = 0; point <= SEARCH_POINTS; point += 1) {
    const tau2 = lowest * (highest / lowest) ** (point / SEARCH_POINTS);
    const risingHere = slope(tau2) > 0;
    if (rising && !risingHere) intervals.push([before, tau2]);
    rising = risingHere;
    before = tau2;
  }
  return intervals;
}
