import { requireOpenProbability } from '../check-argument';
import type { CannotCompute } from '../outcome';
import { clusterSums, type RatioRows } from './cluster-sums';
import { jackknifeRatio } from './jackknife-ratio';
import { bellMcCaffreyDf } from './leave-one-out';
import { tInterval } from './t-interval';

export type SmallSampleRatio = {
  readonly kind: 'estimate';
  /** sum(numerator) / sum(denominator). */
  readonly estimate: number;
  /** Jackknife about the estimate. */
  readonly standardError: number;
  readonly interval: ReturnType<typeof tInterval>;
  /** Degrees of freedom behind the interval; below clusters - 1 when clusters differ in size. */
  readonly df: number;
  readonly method: string;
  readonly rows: number;
  readonly clusters: number;
};

/**
 * The ratio of two sums with an interval that keeps its level with few clusters of unequal size: the
 * delete-one-cluster jackknife about the estimate, and t on Bell & McCaffrey's degrees of freedom instead of k - 1.
 *
 * With w_i the share of cluster i in the denominator, the jackknife is sum of squares of v_i (e_i - w_i sum e),
 * v_i = 1 / (1 - w_i), e_i the cluster's residual. Taking Var(e_i) in proportion to w_i (batches as independent), it
 * has the same mean and variance as a multiple of chi-square on (tr B)^2 / tr(B^2) degrees of freedom, where
 * B_ij = u_i u_j (d_ij / w_i - 1), u_i = w_i / (1 - w_i). Clusters of one size give k - 1. The plain t interval on
 * k - 1 misses up to twice as often as it should with 3 to 12 unequal clusters (CALIBRATION.md).
 *
 * Source: Bell & McCaffrey (2002, Survey Methodology 28, 169-181, from memory), here for a ratio.
 *
 * @param level two-sided, 0 < level < 1.
 * @returns the ratio, or a reason as `jackknifeRatio` gives.
 * @throws ArgumentError as `ratioOfSums`.
 */
export function smallSampleRatio(
  input: RatioRows & { readonly level: number },
): SmallSampleRatio | CannotCompute {
  requireOpenProbability('level', input.level);
  const jackknife = jackknifeRatio(input);
  if (jackknife.kind === 'cannot-compute') return jackknife;
  const df = bellMcCaffreyDf(clusterSums(input));
  const standardError = jackknife.standardErrorAboutEstimate;
  return {
    kind: 'estimate',
    estimate: jackknife.estimate,
    standardError,
    interval: tInterval(jackknife.estimate, standardError, df, input.level),
    df,
    method: 'ratio of sums, jackknife by cluster, Bell-McCaffrey degrees of freedom',
    rows: jackknife.rows,
    clusters: jackknife.clusters,
  };
}
