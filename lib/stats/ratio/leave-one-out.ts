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
