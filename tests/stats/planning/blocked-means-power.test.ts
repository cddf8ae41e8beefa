import { describe, expect, it } from 'vitest';
import { blockedMeansPower } from '@/lib/stats/planning/blocked-means-power';
import { twoMeansPower } from '@/lib/stats/planning/two-means-power';

const layout = { difference: 12, standardDeviation: 15, arms: 2, significance: 0.05 };

describe('the power of a comparison of arms within strata', () => {
  it('is that of the paired t test with one run of each arm in every stratum', () => {
    const paired = twoMeansPower({
      difference: 12,
      standardDeviation: 15 * Math.SQRT2,
      perGroup: 10,
      significance: 0.05,
      design: 'paired',
    });
    expect(blockedMeansPower({ ...layout, perArm: 10, strata: 10 })).toBeCloseTo(paired, 12);
  });

  it('is that of the t test of two groups in one stratum', () => {
    const independent = twoMeansPower({
      difference: 12,
      standardDeviation: 15,
      perGroup: 10,
      significance: 0.05,
      design: 'independent',
    });
    expect(blockedMeansPower({ ...layout, perArm: 10, strata: 1 })).toBeCloseTo(independent, 12);
  });

  it('is 0 where nothing is left to estimate the variance', () => {
    expect(blockedMeansPower({ ...layout, perArm: 1, strata: 1 })).toBe(0);
  });

  it('refuses fewer than two arms', () => {
    expect(() => blockedMeansPower({ ...layout, arms: 1, perArm: 5, strata: 2 })).toThrow('arms');
  });
});
