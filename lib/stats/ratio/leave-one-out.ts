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
 * Degrees of freedom of the jackknife variance when clusters differ in size: (k-1)/k (sum X^2)^2 / sum X^4, which is
 * k - 1 for equal sizes and less the more a few clusters dominate; at least 1. Satterthwaite's formula with residuals
 * in proportion to size.
 */
export function sizeAdjustedDf(clusters: readonly ClusterSum[]): number {
  const largest = Math.max(...clusters.map((sum) => sum.denominator));
  const squares = clusters.map((sum) => (sum.denominator / largest) ** 2);
  const k = clusters.length;
  const df = (((k - 1) / k) * total(squares) ** 2) / total(squares.map((square) => square ** 2));
  // Equal sizes leave a rounding error beside a whole number.
  return Math.max(1, Math.round(df * 1e9) / 1e9);
}
