import { describe, expect, it } from 'vitest';
import { profileOfCounts } from '@/lib/stats/clustered/beta-binomial-profile';
import type { ClusterCount } from '@/lib/stats/clustered/cluster-counts';
import { correlationWeights } from '@/lib/stats/clustered/correlation-weights';

const clustersOf = (counts: readonly (readonly [number, number])[]): ClusterCount[] =>
  counts.map(([events, trials], index) => ({ label: String(index), events, trials }));

const meanCorrelation = (clusters: readonly ClusterCount[]) =>
  correlationWeights(clusters).reduce((sum, { correlation, weight }) => sum + weight * correlation, 0);

describe('correlationWeights', () => {
  it('has the mean of the weight given beforehand, 1/4, where clusters of one unit say nothing', () => {
    expect(
      meanCorrelation(
        clustersOf([
          [1, 1],
          [0, 1],
          [0, 1],
        ]),
      ),
    ).toBeCloseTo(0.25, 3);
  });

  it('adds up to 1 and follows what the clusters say', () => {
    const alike = clustersOf(Array.from({ length: 30 }, () => [6, 20] as const));
    const apart = clustersOf(
      Array.from({ length: 30 }, (_, index) => [index % 3 === 0 ? 18 : 0, 20] as const),
    );
    expect(correlationWeights(apart).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(meanCorrelation(alike)).toBeLessThan(0.02);
    expect(meanCorrelation(apart)).toBeGreaterThan(0.6);
  });
});

/** The mean correlation by brute force: even steps of the log odds of rho from e^-18 to e^7, and of the proportion at each. */
function plainMeanCorrelation(clusters: readonly ClusterCount[], angles: number): number {
  const profile = profileOfCounts(clusters);
  const steps = 200;
  const correlations = Array.from(
    { length: steps },
    (_, index) => 1 / (1 + Math.exp(18 - (25 * (index + 0.5)) / steps)),
  );
  const logs = correlations.map((rho) => {
    const at = profile(rho);
    const values = Array.from({ length: angles }, (_, angle) =>
      at(Math.sin((((angle + 0.5) / angles) * Math.PI) / 2) ** 2),
    );
    const top = Math.max(...values);
    const sum = values.reduce((total, value) => total + Math.exp(value - top), 0);
    // The weight 3 (1 - rho)^2 of even steps of the log odds.
    return top + Math.log(sum * rho * (1 - rho) ** 3);
  });
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const mean = weights.reduce((sum, weight, index) => sum + weight * (correlations[index] ?? 0), 0);
  return mean / weights.reduce((sum, weight) => sum + weight, 0);
}

describe('the grid of correlationWeights', () => {
  it.each([
    ['three clusters of three hundred', [6, 5, 9], 300, 300],
    ['three without events', [0, 0, 0], 24, 300],
    ['two of a few units', [1, 3], 8, 300],
    ['eight of a hundred that are alike', [50, 48, 52, 51, 49, 47, 53, 50], 100, 300],
    ['five of thirty thousand that are alike', [12_010, 11_950, 12_040, 11_930, 12_070], 30_000, 1500],
    ['eight of a hundred thousand with few events', [9, 12, 7, 11, 10, 8, 13, 10], 100_000, 4000],
  ])('finds the mean that even steps of the log odds find: %s', (_, events, trials, angles) => {
    const clusters = clustersOf(events.map((count) => [count, trials] as const));
    const plain = plainMeanCorrelation(clusters, angles);
    expect(Math.abs(meanCorrelation(clusters) - plain)).toBeLessThan(0.02 * plain);
  });
});

describe('profileOfCounts', () => {
  it('is the sum over the units, however small the correlation and large the cluster', () => {
    const [events, trials, mu] = [1230, 4000, 0.17];
    const profile = profileOfCounts(clustersOf([[events, trials]]));
    for (const rho of [0, 1e-12, 1e-10, 1e-7, 1e-4, 0.1]) {
      const theta = rho / (1 - rho);
      let sum = 0;
      for (let j = 0; j < events; j += 1) sum += Math.log(mu + j * theta);
      for (let j = 0; j < trials - events; j += 1) sum += Math.log(1 - mu + j * theta);
      for (let j = 0; j < trials; j += 1) sum -= Math.log(1 + j * theta);
      expect(profile(rho)(mu)).toBeCloseTo(sum, 7);
    }
  });
});
