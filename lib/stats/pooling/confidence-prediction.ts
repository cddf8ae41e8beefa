import { requireOpenProbability } from '../check-argument';
import { chiSquareQuantile } from '../distribution/chi-square';
import { normalCdf } from '../distribution/normal';
import { tCdf, tQuantile } from '../distribution/student-t';
import { findRoot } from '../find-root';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { generalisedQRoot } from './generalised-q-root';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

/** Points at which the distributions of tau2 and of the mean are cut. */
const VARIANCE_POINTS = 80;
const MEAN_POINTS = 15;

/** What one value of tau2 says: the mean, its Hartung-Knapp standard error, and the spread of sites. */
type Component = { readonly mean: number; readonly standardError: number; readonly spread: number };

/**
 * Prediction interval for the true value of one further site that allows for not knowing the between-site variance.
 *
 * The confidence distribution of tau2 is read off Q(tau2) ~ chi-square(k - 1) at evenly spaced probabilities; for
 * each value the further site is mean(tau2) + t(k - 1) se(tau2) + sqrt(tau2) z, and the limits are quantiles of the
 * mixture. Unlike intervals that take an estimate of tau2 for the truth it keeps its level with few sites.
 *
 * Source: Nagashima, Noma & Furukawa (2019, Stat Methods Med Res 28, 1689-1702, from memory), who draw at random
 * what is summed here over fixed points.
 *
 * @returns the interval; `too-few-observations` below three sites, where it would be too wide to mean anything.
 * @throws ArgumentError for estimates or variances out of range.
 */
export function confidencePrediction(
  sites: readonly SiteEstimate[],
  level: number,
): Interval | CannotCompute {
  checkSiteEstimates(sites);
  requireOpenProbability('level', level);
  const degreesOfFreedom = sites.length - 1;
  if (degreesOfFreedom < 2) {
    return cannotCompute('too-few-observations', 'Predicting a further site needs at least three sites.');
  }
  const components = Array.from({ length: VARIANCE_POINTS }, (_, index): Component => {
    const target = chiSquareQuantile((index + 0.5) / VARIANCE_POINTS, degreesOfFreedom);
    const tau2 = generalisedQRoot(sites, target);
    const { mean, sumOfWeights, q } = weightedMean(sites, tau2);
    // Held at 1 or above like the factor of the mean's own interval.
    const factor = Math.max(1, q / degreesOfFreedom);
    return { mean, standardError: Math.sqrt(factor / sumOfWeights), spread: Math.sqrt(tau2) };
  });
  const meanErrors = Array.from({ length: MEAN_POINTS }, (_, index) =>
    tQuantile((index + 0.5) / MEAN_POINTS, degreesOfFreedom),
  );
  const cdf = (x: number) => {
    let sum = 0;
    for (const { mean, standardError, spread } of components) {
      if (spread === 0) sum += tCdf((x - mean) / standardError, degreesOfFreedom);
      else {
        let inner = 0;
        for (const error of meanErrors) inner += normalCdf((x - mean - error * standardError) / spread);
        sum += inner / MEAN_POINTS;
      }
    }
    return sum / VARIANCE_POINTS;
  };
  const quantile = (probability: number) => {
    const [first] = components;
    let reach = (first?.standardError ?? 1) + Math.max(...components.map(({ spread }) => spread));
    const centre = first?.mean ?? 0;
    const side = probability < 0.5 ? -1 : 1;
    const excess = (x: number) => cdf(x) - probability;
    while (side * excess(centre + side * reach) < 0) reach *= 2;
    const other = centre - side * reach;
    return findRoot(
      excess,
      Math.min(other, centre + side * reach),
      Math.max(other, centre + side * reach),
      1e-9,
    );
  };
  return {
    kind: 'interval',
    low: quantile((1 - level) / 2),
    high: quantile((1 + level) / 2),
    level,
    method: 'prediction, confidence distribution of the between-site variance',
  };
}
