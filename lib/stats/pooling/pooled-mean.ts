import { requireNonNegative, requireOpenProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type BetweenVarianceEstimator, betweenVariance } from './between-variance';
import { type HartungKnapp, hartungKnapp } from './hartung-knapp';
import { type PredictionIntervals, predictionIntervals } from './prediction-intervals';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

export type PooledMean = {
  readonly kind: 'estimate';
  /** Mean of the sites' true values, weighted by 1 / (variance + between-site variance). */
  readonly estimate: number;
  /** Interval to show: Hartung-Knapp, never narrower than by the plain standard error; z with one site. */
  readonly interval: Interval;
  /** sqrt(1 / sum of weights). */
  readonly standardError: number;
  /** estimate +- z standardError: too narrow below some 20 sites. */
  readonly normalInterval: Interval;
  readonly hartungKnapp: HartungKnapp | CannotCompute;
  readonly prediction: PredictionIntervals | CannotCompute;
  readonly betweenVariance: number;
  /** Share of each site, percent, in the order given. */
  readonly weightsPercent: readonly number[];
  /** tau2 / (tau2 + typical sampling variance), percent, and 1 + tau2 / typical (Higgins & Thompson 2002). */
  readonly iSquaredPercent: number | CannotCompute;
  readonly hSquared: number | CannotCompute;
  readonly sites: number;
  readonly method: string;
};

const estimatorNames: Readonly<Record<BetweenVarianceEstimator, string>> = {
  'dersimonian-laird': 'DerSimonian-Laird',
  reml: 'REML',
  'paule-mandel': 'Paule-Mandel',
};

/**
 * Random-effects mean over sites: each site's true value differs, and the mean of those values is sought.
 *
 * @param level confidence level, 0-1.
 * @returns the mean; with one site that site's own estimate and z interval; `no-data` without sites.
 * @throws ArgumentError for estimates or variances out of range, or a label that occurs twice.
 */
export function pooledMean(
  sites: readonly SiteEstimate[],
  estimator: BetweenVarianceEstimator,
  level: number,
): PooledMean | CannotCompute {
  const method = `random-effects mean, ${estimatorNames[estimator]} between-site variance`;
  return pooledMeanAt(sites, betweenVariance(sites, estimator), level, method);
}

/** The same for a between-site variance that is already known, at least 0. */
export function pooledMeanAt(
  sites: readonly SiteEstimate[],
  tau2: number,
  level: number,
  method = 'random-effects mean, given between-site variance',
): PooledMean | CannotCompute {
  checkSiteEstimates(sites);
  requireNonNegative('tau2', tau2);
  requireOpenProbability('level', level);
  if (sites.length === 0) return cannotCompute('no-data', 'There are no sites to pool.');
  const { mean, weights, sumOfWeights } = weightedMean(sites, tau2);
  const standardError = Math.sqrt(1 / sumOfWeights);
  const reach = normalQuantile(0.5 + level / 2) * standardError;
  const normalInterval: Interval = {
    kind: 'interval',
    low: mean - reach,
    high: mean + reach,
    level,
    method: 'normal',
  };
  const knapp = hartungKnapp(sites, tau2, level);
  const typical = typicalVariance(sites);
  return {
    kind: 'estimate',
    estimate: mean,
    interval: knapp.kind === 'hartung-knapp' ? knapp.neverNarrower.interval : normalInterval,
    standardError,
    normalInterval,
    hartungKnapp: knapp,
    prediction: predictionIntervals(sites, tau2, level),
    betweenVariance: tau2,
    weightsPercent: weights.map((weight) => (100 * weight) / sumOfWeights),
    iSquaredPercent: typeof typical === 'number' ? (100 * tau2) / (tau2 + typical) : typical,
    hSquared: typeof typical === 'number' ? 1 + tau2 / typical : typical,
    sites: sites.length,
    method,
  };
}

/** (k - 1) sum w / ((sum w)^2 - sum w^2), w = 1 / variance (Higgins & Thompson 2002, Stat Med 21, 1539-1558). */
function typicalVariance(sites: readonly SiteEstimate[]): number | CannotCompute {
  if (sites.length < 2) {
    return cannotCompute('too-few-observations', 'Differences between sites need at least two sites.');
  }
  const { sumOfWeights, sumOfSquaredWeights } = weightedMean(sites, 0);
  return ((sites.length - 1) * sumOfWeights) / (sumOfWeights ** 2 - sumOfSquaredWeights);
}
