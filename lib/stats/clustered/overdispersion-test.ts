import { chiSquareSurvival } from '../distribution/chi-square';
import { normalSurvival } from '../distribution/normal';
import { type CannotCompute, cannotCompute } from '../outcome';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';

export type OverdispersionTest = {
  readonly kind: 'test';
  /** Pearson's chi-square of the clusters against one common proportion, on clusters - 1 degrees of freedom. */
  readonly pearson: { readonly statistic: number; readonly df: number; readonly pValue: number };
  /** Chi-square over its degrees of freedom: 1 for independent units. */
  readonly dispersion: number;
  /** Tarone's Z with its one-sided upper p-value; a reason when no cluster has two units. */
  readonly tarone: { readonly statistic: number; readonly pValue: number } | CannotCompute;
  readonly method: string;
  readonly clusters: number;
};

/**
 * Two tests that units of a cluster are independent, that is, of no spread beyond the binomial. Tarone's Z,
 * (sum (x_i - n_i p)^2 / (p (1 - p)) - sum n_i) / sqrt(2 sum n_i (n_i - 1)), is aimed at the beta-binomial and is the
 * one to use; both are approximations that need more than a few clusters.
 *
 * Fewer than 2 clusters, the same outcome throughout, or no units: a reason.
 * Source: Tarone (1979), "Testing the goodness of fit of the binomial distribution", Biometrika 66:585-590.
 * @throws ArgumentError as clusterCounts.
 */
export function overdispersionTest(rows: ClusteredRows): OverdispersionTest | CannotCompute {
  const { clusters } = clusterCounts(rows);
  if (clusters.length === 0) return cannotCompute('no-data', 'There are no units.');
  const { estimate, trials, designEffect } = linearisedProportion(clusters);
  if (typeof designEffect !== 'number') return designEffect;
  const binary = estimate * (1 - estimate);
  let statistic = 0;
  let squares = 0;
  let pairs = 0;
  for (const { events, trials: n } of clusters) {
    const square = (events - n * estimate) ** 2;
    statistic += square / (n * binary);
    squares += square;
    pairs += n * (n - 1);
  }
  const df = clusters.length - 1;
  const z = (squares / binary - trials) / Math.sqrt(2 * pairs);
  return {
    kind: 'test',
    pearson: { statistic, df, pValue: chiSquareSurvival(statistic, df) },
    dispersion: statistic / df,
    tarone:
      pairs > 0
        ? { statistic: z, pValue: normalSurvival(z) }
        : cannotCompute('not-identifiable', 'Groups of one unit cannot show how alike units of a group are.'),
    method: 'Pearson chi-square and Tarone Z',
    clusters: clusters.length,
  };
}
