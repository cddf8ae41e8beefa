import { describe, expect, it } from 'vitest';
import { seededRandom } from '@/lib/stats/random/seeded-random';

const draws = 20_000;

function meanAndVariance(draw: () => number) {
  const values = Array.from({ length: draws }, draw);
  const mean = values.reduce((sum, value) => sum + value, 0) / draws;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws - 1);
  return { mean, variance };
}

/** Four standard errors of a mean of `draws` values with this variance. */
const slack = (variance: number) => 4 * Math.sqrt(variance / draws);

describe('seededRandom', () => {
  it('gives the same numbers for the same seed and others for another seed', () => {
    const first = seededRandom(7);
    const again = seededRandom(7);
    const other = seededRandom(8);
    const run = (random: typeof first) => Array.from({ length: 50 }, () => random.next());
    const values = run(first);
    expect(run(again)).toEqual(values);
    expect(run(other)).not.toEqual(values);
  });

  it('keeps seeds beyond 32 bits and negative seeds apart', () => {
    const firsts = [5, 5 + 2 ** 32, -5].map((seed) => seededRandom(seed).next());
    expect(new Set(firsts).size).toBe(3);
  });

  it('draws uniforms within [0, 1) with the right mean and variance', () => {
    const random = seededRandom(1);
    const { mean, variance } = meanAndVariance(() => {
      const value = random.next();
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThan(1);
      return value;
    });
    expect(Math.abs(mean - 0.5)).toBeLessThan(slack(1 / 12));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.003);
  });

  it.each([
    ['normal', (r: ReturnType<typeof seededRandom>) => r.normal(), 0, 1],
    ['gamma of shape 0.3', (r: ReturnType<typeof seededRandom>) => r.gamma(0.3), 0.3, 0.3],
    ['gamma of shape 4', (r: ReturnType<typeof seededRandom>) => r.gamma(4), 4, 4],
    ['beta(2, 6)', (r: ReturnType<typeof seededRandom>) => r.beta(2, 6), 0.25, 12 / (64 * 9)],
    ['binomial(12, 0.3)', (r: ReturnType<typeof seededRandom>) => r.binomial(12, 0.3), 3.6, 2.52],
    ['integer below 6', (r: ReturnType<typeof seededRandom>) => r.integer(6), 2.5, 35 / 12],
  ] as const)('draws a %s with the right mean and variance', (_name, draw, mean, variance) => {
    const random = seededRandom(20);
    const found = meanAndVariance(() => draw(random));
    expect(Math.abs(found.mean - mean)).toBeLessThan(slack(variance));
    expect(Math.abs(found.variance / variance - 1)).toBeLessThan(0.08);
  });

  it('shuffles a copy that holds the same items, every order about equally often', () => {
    const random = seededRandom(3);
    const items = ['a', 'b', 'c'];
    const counts = new Map<string, number>();
    for (let round = 0; round < 6000; round += 1) {
      const order = random.shuffle(items).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(items).toEqual(['a', 'b', 'c']);
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(125);
  });

  it('names the argument that is out of range', () => {
    const random = seededRandom(1);
    expect(() => seededRandom(1.5)).toThrow(/seed/);
    expect(() => random.integer(0)).toThrow(/maxExclusive/);
    expect(() => random.binomial(-1, 0.5)).toThrow(/^n:/);
    expect(() => random.binomial(3, 1.5)).toThrow(/^p:/);
    expect(() => random.gamma(0)).toThrow(/shape/);
  });
});
