import { type ClusterSum, total } from './cluster-sums';

/** The ratio without each cluster in turn; undefined when some cluster holds the whole denominator. */
export function leaveOneOutRatios(clusters: readonly ClusterSum[]): number[] | undefined {
  const above = total(clusters.map((sum) => sum.numerator));
  const below = total(clusters.map((sum) => sum.denominator));
  if (clusters.some((sum) => sum.denominator === below)) return undefined;
  return clusters.map((sum) => (above - sum.numerator) / (below - sum.denominator));
}

/** sqrt((k-1)/k sum (replicate - centre)^2). */
export function jackknifeSpread(replicates: readonly number[], centre: number): number {
  const k = replicates.length;
  return Math.sqrt(((k - 1) / k) * total(replicates.map((ratio) => (ratio - centre) ** 2)));
}

/**
 * Bell & McCaffrey's degrees of freedom of the jackknife about the ratio, here for a ratio of sums; k - 1 for clusters
 * of one size and fewer the more they differ.
 *
 * With w_i the share of cluster i in the denominator and e_i its residual, the jackknife is the sum of squares of
 * v_i (e_i - w_i sum e), v_i = 1 / (1 - w_i). Taking Var(e_i) in proportion to w_i (rows as independent) it has the same
 * mean and variance as a multiple of chi-square on (tr B)^2 / tr(B^2) degrees of freedom, where
 * B_ij = u_i u_j (d_ij / w_i - 1), u_i = w_i / (1 - w_i). Clusters without denominator add none.
 * Source: Bell & McCaffrey (2002), Survey Methodology 28:169-181 (citation from memory).
 */
export function bellMcCaffreyDf(clusters: readonly ClusterSum[]): number {
  const below = total(clusters.map((sum) => sum.denominator));
  const terms = clusters
    .map((sum) => sum.denominator / below)
    .filter((share) => share > 0)
    .map((share) => ({ share, square: (share / (1 - share)) ** 2 }));
  const trace = total(terms.map(({ share, square }) => square * (1 / share - 1)));
  const diagonal = total(terms.map(({ share, square }) => square ** 2 * ((1 / share - 1) ** 2 - 1)));
  const df = trace ** 2 / (diagonal + total(terms.map(({ square }) => square)) ** 2);
  // Equal sizes leave a rounding error beside a whole number.
  return Math.round(df * 1e9) / 1e9;
}
