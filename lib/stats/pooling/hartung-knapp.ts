import { tQuantile, tSurvival } from '../distribution/student-t';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import type { SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

export type HartungKnapp = {
  readonly kind: 'hartung-knapp';
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly interval: Interval;
  /** Two-sided test that the mean is 0. */
  readonly pValue: number | CannotCompute;
  /** The same with the factor held at 1 or above, so that chance agreement of few sites cannot narrow it. */
  readonly neverNarrower: { readonly standardError: number; readonly interval: Interval };
};

/**
 * Interval of the random-effects mean with the weighted spread of the sites themselves and t on k - 1 df:
 * se = sqrt(q / sum w), q = sum(w (y - mean)^2) / (k - 1), w = 1 / (variance + tau2).
 *
 * Sources: Hartung & Knapp (2001, Statistics in Medicine 20, 3875-3889), Sidik & Jonkman (2002), and for the factor
 * held at 1 Rover, Knapp & Friede (2015, BMC Med Res Methodol 15, 99), from memory.
 */
export function hartungKnapp(
  sites: readonly SiteEstimate[],
  betweenVariance: number,
  level: number,
): HartungKnapp | CannotCompute {
  const degreesOfFreedom = sites.length - 1;
  if (degreesOfFreedom < 1) {
    return cannotCompute('too-few-observations', 'The spread between sites needs at least two sites.');
  }
  const { mean, sumOfWeights, q } = weightedMean(sites, betweenVariance);
  const factor = q / degreesOfFreedom;
  const standardError = Math.sqrt(factor / sumOfWeights);
  const wide = Math.sqrt(Math.max(1, factor) / sumOfWeights);
  const t = tQuantile(0.5 + level / 2, degreesOfFreedom);
  const around = (se: number, method: string): Interval => ({
    kind: 'interval',
    low: mean - t * se,
    high: mean + t * se,
    level,
    method,
  });
  return {
    kind: 'hartung-knapp',
    standardError,
    degreesOfFreedom,
    interval: around(standardError, 'Hartung-Knapp'),
    pValue: pValue(mean, standardError, degreesOfFreedom),
    neverNarrower: { standardError: wide, interval: around(wide, 'Hartung-Knapp, factor at least 1') },
  };
}

function pValue(mean: number, standardError: number, degreesOfFreedom: number): number | CannotCompute {
  if (standardError > 0) return Math.min(1, 2 * tSurvival(Math.abs(mean) / standardError, degreesOfFreedom));
  if (mean !== 0) return 0;
  return cannotCompute('no-variation', 'All sites gave exactly 0, so there is nothing to test.');
}
