import type { SeededRandom } from '@/lib/stats/random/seeded-random';

/** Units per cluster run through in this order: mean about 15, the largest nine times the smallest. */
const SIZES = [12, 4, 24, 8, 36, 6, 16] as const;

export function clusterSize(index: number): number {
  return SIZES[index % SIZES.length] ?? 12;
}

/** The probability of an event in one cluster: beta with this mean, so that its units correlate by `correlation`. */
export function clusterRate(random: SeededRandom, rate: number, correlation: number): number {
  if (correlation === 0) return rate;
  const spread = (1 - correlation) / correlation;
  return random.beta(rate * spread, (1 - rate) * spread);
}

export type ClusterCount = { readonly events: number; readonly units: number };

/** Events and units of `clusters` clusters of unequal size. */
export function clusterCounts(
  random: SeededRandom,
  setting: { readonly clusters: number; readonly correlation: number; readonly rate: number },
): ClusterCount[] {
  return Array.from({ length: setting.clusters }, (_, index) => {
    const units = clusterSize(index);
    const events = random.binomial(units, clusterRate(random, setting.rate, setting.correlation));
    return { events, units };
  });
}
