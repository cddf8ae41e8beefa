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
