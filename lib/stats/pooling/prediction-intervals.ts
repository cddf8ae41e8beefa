import { normalQuantile } from '../distribution/normal';
import { tQuantile } from '../distribution/student-t';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { hartungKnapp } from './hartung-knapp';
import type { SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

/** Where the true value of one further site is to be expected. */
export type PredictionIntervals = {
  readonly kind: 'prediction';
  /** t on k - 1 df with the Hartung-Knapp standard error. */
  readonly hartungKnapp: Interval;
  /** z with the plain standard error. */
  readonly normal: Interval;
  /** t on k - 2 df with the plain standard error (Higgins, Thompson & Spiegelhalter 2009); needs three sites. */
  readonly higgins: Interval | CannotCompute;
};

/**
 * Prediction intervals mean +- q sqrt(se^2 + tau2). They take the between-site variance as known and
 * miss too often (down to 83 % instead of 95 %, CALIBRATION.md): kept for comparison, show `confidencePrediction`.
 *
 * Source: Higgins, Thompson & Spiegelhalter (2009, J R Stat Soc A 172, 137-159, from memory).
 */
export function predictionIntervals(
  sites: readonly SiteEstimate[],
  betweenVariance: number,
  level: number,
): PredictionIntervals | CannotCompute {
  const knapp = hartungKnapp(sites, betweenVariance, level);
  if (knapp.kind === 'cannot-compute') return knapp;
  const count = sites.length;
  const { mean, sumOfWeights } = weightedMean(sites, betweenVariance);
  const around = (quantile: number, squaredError: number, method: string): Interval => {
    const reach = quantile * Math.sqrt(squaredError + betweenVariance);
    return { kind: 'interval', low: mean - reach, high: mean + reach, level, method };
  };
  const upper = 0.5 + level / 2;
  return {
    kind: 'prediction',
    hartungKnapp: around(
      tQuantile(upper, count - 1),
      knapp.standardError ** 2,
      'prediction, Hartung-Knapp, t(k-1)',
    ),
    normal: around(normalQuantile(upper), 1 / sumOfWeights, 'prediction, normal'),
    higgins:
      count > 2
        ? around(tQuantile(upper, count - 2), 1 / sumOfWeights, 'prediction, t(k-2)')
        : cannotCompute('too-few-observations', 'This prediction interval needs at least three sites.'),
  };
}
