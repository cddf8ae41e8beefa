import { describe, expect, it } from 'vitest';
import { binomialSurvival } from '@/lib/stats/distribution/binomial';
import { clusteredTail } from '@/lib/stats/watching/clustered-tail';

describe('the upper tail of a count whose log odds vary', () => {
  it('is the binomial tail when they do not', () => {
    expect(clusteredTail(5, 20, Math.log(0.1 / 0.9), 0)).toBeCloseTo(binomialSurvival(4, 20, 0.1), 12);
  });

  it('agrees with adding up a fine grid of log odds', () => {
    const [logit, sd] = [-2, 1.2];
    let [sum, weights] = [0, 0];
    for (let z = -8; z <= 8; z += 0.001) {
      const weight = Math.exp((-z * z) / 2);
      sum += weight * binomialSurvival(9, 20, 1 / (1 + Math.exp(-(logit + sd * z))));
      weights += weight;
    }
    expect(clusteredTail(10, 20, logit, sd)).toBeCloseTo(sum / weights, 6);
  });

  it('is wider the more they vary, 1 at no event and 0 beyond the units', () => {
    expect(clusteredTail(12, 20, -2, 1.5)).toBeGreaterThan(clusteredTail(12, 20, -2, 0.5));
    expect(clusteredTail(0, 20, -2, 1)).toBe(1);
    expect(clusteredTail(21, 20, -2, 1)).toBe(0);
  });

  it('refuses a count that is none and a negative spread', () => {
    expect(() => clusteredTail(1.5, 20, 0, 1)).toThrow(/events/);
    expect(() => clusteredTail(1, 20, 0, -1)).toThrow(/standardDeviation/);
  });
});
