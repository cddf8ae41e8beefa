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

/** The mean correlation by brute force: even steps of the weight given beforehand, and of the proportion at each. */
function plainMeanCorrelation(clusters: readonly ClusterCount[]): number {
  const profile = profileOfCounts(clusters);
  const [shares, angles] = [1000, 300];
  const logs = Array.from({ length: shares }, (_, index) => {
    const at = profile(1 - Math.cbrt(1 - (index + 0.5) / shares));
    const values = Array.from({ length: angles }, (__, angle) =>
      at(Math.sin((((angle + 0.5) / angles) * Math.PI) / 2) ** 2),
    );
    const top = Math.max(...values);
    return top + Math.log(values.reduce((sum, value) => sum + Math.exp(value - top), 0));
  });
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const mean = weights.reduce(
    (sum, weight, index) => sum + weight * (1 - Math.cbrt(1 - (index + 0.5) / shares)),
    0,
  );
  return mean / weights.reduce((sum, weight) => sum + weight, 0);
}

describe('the grid of correlationWeights', () => {
  it.each([
    ['three clusters of three hundred', [6, 5, 9], 300],
    ['three without events', [0, 0, 0], 24],
    ['two of a few units', [1, 3], 8],
    ['eight of a hundred that are alike', [50, 48, 52, 51, 49, 47, 53, 50], 100],
  ])('finds the mean that 300,000 even steps find: %s', (_, events, trials) => {
    const clusters = clustersOf(events.map((count) => [count, trials] as const));
    const plain = plainMeanCorrelation(clusters);
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
