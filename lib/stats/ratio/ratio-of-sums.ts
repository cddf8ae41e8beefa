import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ClusterSum, clusterSums, type RatioRows, total } from './cluster-sums';
import { bellMcCaffreyDf, jackknifeSpread, leaveOneOutRatios } from './leave-one-out';
import { tInterval } from './t-interval';

export type RatioOfSums = {
  readonly kind: 'estimate';
  /** sum(numerator) / sum(denominator); times 100 it is a percentage. */
  readonly estimate: number;
  /** Linearised, cluster-robust. */
  readonly standardError: number | CannotCompute;
  /** The shipped interval: jackknife, with degrees of freedom that allow for clusters of unequal size. */
  readonly interval: Interval | CannotCompute;
  /** Cochran's: linearised standard error with t(clusters - 1). */
  readonly linearisedInterval: Interval | CannotCompute;
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
 * Rows of one cluster are added up first (Y_i, X_i). With R = sum Y / sum X and k clusters the linearised
 * se^2 = k/(k-1) sum (Y_i - R X_i)^2 / (sum X)^2, with R -+ t(k-1) se. A cluster with X_i = 0 counts. The shipped
 * interval takes the delete-one-cluster jackknife about R and Bell & McCaffrey's degrees of freedom instead
 * (leave-one-out.ts): with 3 to 60 clusters of unequal size a nominal 95 % interval covers 94 to 98 %, where the
 * linearised one goes down to 90 % (CALIBRATION.md). Should one cluster hold the whole denominator it is the
 * linearised one.
 *
 * Fewer than 2 clusters: the estimate, with a reason in place of standard error and intervals. No rows, or a
 * denominator of 0: a reason. The lower limit can be negative with few clusters; clusters that all have the same
 * ratio give an interval without width, which says only that the data showed no spread.
 * Source: Cochran (1977), Sampling Techniques, 3rd edition, sections 2.11, 6.4 and 6.17 (sections from memory);
 * Bell & McCaffrey (2002), Survey Methodology 28:169-181 (citation from memory).
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
    method: 'ratio of sums over clusters',
    rows: input.numerator.length,
    clusters: clusters.length,
    degreesOfFreedom: df,
    sumNumerator,
    sumDenominator,
  };
  if (df === 0) {
    return {
      kind: 'estimate',
      ...about,
      standardError: ONE_CLUSTER,
      interval: ONE_CLUSTER,
      linearisedInterval: ONE_CLUSTER,
    };
  }
  const standardError = linearisedStandardError(clusters, estimate, sumDenominator);
  const linearisedInterval = tInterval(estimate, standardError, df, level);
  return {
    kind: 'estimate',
    ...about,
    standardError,
    interval: jackknifeInterval(clusters, estimate, level) ?? linearisedInterval,
    linearisedInterval,
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

function jackknifeInterval(
  clusters: readonly ClusterSum[],
  ratio: number,
  level: number,
): Interval | undefined {
  const replicates = leaveOneOutRatios(clusters);
  if (replicates === undefined) return undefined;
  return tInterval(
    ratio,
    jackknifeSpread(replicates, ratio),
    bellMcCaffreyDf(clusters),
    level,
    'jackknife, t',
  );
}
