import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { clusterSums, type RatioRows, total } from './cluster-sums';
import { jackknifeSpread, leaveOneOutRatios } from './leave-one-out';
import { tInterval } from './t-interval';

export type JackknifeRatio = {
  readonly kind: 'estimate';
  /** sum(numerator) / sum(denominator), not corrected for bias. */
  readonly estimate: number;
  /** Deviations of the leave-one-out ratios taken about their own mean. */
  readonly standardErrorAboutMean: number;
  /** Deviations taken about the estimate: never the smaller one, and the one behind the interval. */
  readonly standardErrorAboutEstimate: number;
  readonly interval: Interval;
  readonly method: string;
  readonly rows: number;
  readonly clusters: number;
};

/**
 * The delete-one-cluster jackknife of a ratio of sums: se^2 = (k-1)/k sum (R_(-i) - centre)^2, with a t(k-1) interval.
 * Where clusters differ much in size it is larger, and safer, than the linearised standard error.
 *
 * Fewer than 2 clusters, no rows, or a denominator of 0 with or without some cluster: a reason.
 * Source: Cochran (1977), Sampling Techniques, 3rd edition, section 6.17 (section from memory).
 * @throws ArgumentError as ratioOfSums.
 */
export function jackknifeRatio(
  input: RatioRows & { readonly level: number },
): JackknifeRatio | CannotCompute {
  requireOpenProbability('level', input.level);
  const clusters = clusterSums(input);
  const k = clusters.length;
  if (k === 0) return cannotCompute('no-data', 'There are no batches to take a ratio of.');
  const above = total(clusters.map((sum) => sum.numerator));
  const below = total(clusters.map((sum) => sum.denominator));
  if (below === 0) return cannotCompute('zero-denominator', 'The amounts to divide by add up to zero.');
  if (k < 2) {
    return cannotCompute(
      'too-few-clusters',
      'Leaving one group out leaves nothing; at least two independent groups are needed.',
    );
  }
  const replicates = leaveOneOutRatios(clusters);
  if (replicates === undefined) {
    return cannotCompute('zero-denominator', 'All of the amount to divide by is in one group.');
  }
  const estimate = above / below;
  const standardErrorAboutEstimate = jackknifeSpread(replicates, estimate);
  return {
    kind: 'estimate',
    estimate,
    standardErrorAboutMean: jackknifeSpread(replicates, total(replicates) / k),
    standardErrorAboutEstimate,
    interval: tInterval(estimate, standardErrorAboutEstimate, k - 1, input.level),
    method: 'ratio of sums, delete-one-cluster jackknife',
    rows: input.numerator.length,
    clusters: k,
  };
}
