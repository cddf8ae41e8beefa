import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ClusterSum, clusterSums, type RatioRows, total } from './cluster-sums';
import { tInterval } from './t-interval';

export type RatioOfSums = {
  readonly kind: 'estimate';
  /** sum(numerator) / sum(denominator); times 100 it is a percentage. */
  readonly estimate: number;
  /** Linearised, cluster-robust. */
  readonly standardError: number | CannotCompute;
  /** With t(clusters - 1); where clusters are few and unequal, smallSampleRatio's is the one to show. */
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  readonly rows: number;
  readonly clusters: number;
  /** clusters - 1. */
  readonly degreesOfFreedom: number;
  readonly sumNumerator: number;
  readonly sumDenominator: number;
};

const NO_ROWS = cannotCompute('no-data', 'There are no batches to take a ratio of.');
const ZERO_DENOMINATOR = cannotCompute('zero-denominator', 'The amounts to divide by add up to zero.');
const ONE_CLUSTER = cannotCompute(
  'too-few-clusters',
  'All the data comes from one independent group, so how far the figure could be off cannot be told.',
);

/**
 * The ratio of two sums over clustered rows, such as biological efficiency: fresh grams over dry grams. Weighs every
 * gram alike, unlike the mean of the batches' own ratios (mean-of-ratios.ts).
 *
 * Rows of one cluster are added up first (Y_i, X_i). With R = sum Y / sum X and k clusters,
 * se^2 = k/(k-1) sum (Y_i - R X_i)^2 / (sum X)^2 and the interval is R -+ t(k-1) se. A cluster with X_i = 0 counts.
 * With 3 to 12 clusters of unequal size it misses up to twice as often as stated; smallSampleRatio does not.
 *
 * Fewer than 2 clusters: the estimate, with a reason in place of standard error and interval. No rows, or a
 * denominator of 0: a reason. The lower limit can be negative with few clusters; clusters that all have the same
 * ratio give an interval without width, which says only that the data showed no spread.
 * Source: Cochran (1977), Sampling Techniques, 3rd edition, sections 2.11 and 6.4 (sections from memory).
 *
 * @param level two-sided, 0 < level < 1; 0.95 unless told.
 * @throws ArgumentError when the lists differ in length, a value is negative or not finite, or the level is out of range.
 */
export function ratioOfSums(input: RatioRows & { readonly level?: number }): RatioOfSums | CannotCompute {
  const { level = 0.95 } = input;
  requireOpenProbability('level', level);
  const clusters = clusterSums(input);
  if (clusters.length === 0) return NO_ROWS;
  const sumNumerator = total(input.numerator);
  const sumDenominator = total(input.denominator);
  if (sumDenominator === 0) return ZERO_DENOMINATOR;
  const estimate = sumNumerator / sumDenominator;
  const df = clusters.length - 1;
  const about = {
    estimate,
    method: 'ratio of sums, linearised cluster-robust variance',
    rows: input.numerator.length,
    clusters: clusters.length,
    degreesOfFreedom: df,
    sumNumerator,
    sumDenominator,
  };
  if (df === 0) {
    return { kind: 'estimate', ...about, standardError: ONE_CLUSTER, interval: ONE_CLUSTER };
  }
  const standardError = linearisedStandardError(clusters, estimate, sumDenominator);
  return {
    kind: 'estimate',
    ...about,
    standardError,
    interval: tInterval(estimate, standardError, df, level),
  };
}

function linearisedStandardError(
  clusters: readonly ClusterSum[],
  ratio: number,
  denominatorSum: number,
): number {
  const k = clusters.length;
  const squares = total(clusters.map((sum) => (sum.numerator - ratio * sum.denominator) ** 2));
  return Math.sqrt((k / (k - 1)) * squares) / denominatorSum;
}
