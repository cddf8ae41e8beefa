import { requireOpenProbability } from '../check-argument';
import { chiSquareQuantile, chiSquareSurvival } from '../distribution/chi-square';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { generalisedQRoot } from './generalised-q-root';
import { checkSiteEstimates, type SiteEstimate } from './site-estimate';
import { weightedMean } from './weighted-mean';

export type Heterogeneity = {
  readonly kind: 'heterogeneity';
  /** Cochran's Q = sum((estimate - fixed mean)^2 / variance). */
  readonly q: number;
  readonly degreesOfFreedom: number;
  /** Chi-square test that all sites share one value. */
  readonly pValue: number | CannotCompute;
  /** max(0, (Q - df) / Q) as a percentage: the share of spread that is not chance (Higgins & Thompson 2002). */
  readonly iSquaredPercent: number | CannotCompute;
  /** Q-profile limits of the between-site variance (Viechtbauer 2007, Statistics in Medicine 26, 37-52). */
  readonly betweenVarianceInterval: Interval | CannotCompute;
  readonly sites: number;
};

/**
 * How much the sites' values differ beyond chance. Sources from memory.
 *
 * @param level of the interval for the between-site variance, 0-1.
 * @returns the measures; `no-data` without sites.
 * @throws ArgumentError for estimates or variances out of range.
 */
export function heterogeneity(sites: readonly SiteEstimate[], level: number): Heterogeneity | CannotCompute {
  checkSiteEstimates(sites);
  requireOpenProbability('level', level);
  if (sites.length === 0) return cannotCompute('no-data', 'There are no sites to compare.');
  const { q } = weightedMean(sites, 0);
  const degreesOfFreedom = sites.length - 1;
  const lone = cannotCompute('too-few-observations', 'Differences between sites need at least two sites.');
  const method = 'Q-profile';
  return {
    kind: 'heterogeneity',
    q,
    degreesOfFreedom,
    pValue: degreesOfFreedom > 0 ? chiSquareSurvival(q, degreesOfFreedom) : lone,
    iSquaredPercent: iSquared(q, degreesOfFreedom, lone),
    betweenVarianceInterval:
      degreesOfFreedom > 0
        ? {
            kind: 'interval',
            low: generalisedQRoot(sites, chiSquareQuantile(0.5 + level / 2, degreesOfFreedom)),
            high: generalisedQRoot(sites, chiSquareQuantile(0.5 - level / 2, degreesOfFreedom)),
            level,
            method,
          }
        : lone,
    sites: sites.length,
  };
}

function iSquared(q: number, degreesOfFreedom: number, lone: CannotCompute): number | CannotCompute {
  if (degreesOfFreedom === 0) return lone;
  if (q === 0)
    return cannotCompute('no-variation', 'The sites do not differ at all, so there is no spread to split.');
  return Math.max(0, (100 * (q - degreesOfFreedom)) / q);
}
