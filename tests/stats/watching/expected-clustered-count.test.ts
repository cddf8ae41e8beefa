import { describe, expect, it } from 'vitest';
import { marginalMoments } from '@/lib/stats/mixed/binomial/marginal-moments';
import { logistic, marginalProbability } from '@/lib/stats/mixed/binomial/marginal-probability';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { expectedClusteredCount } from '@/lib/stats/watching/expected-clustered-count';

const batches = [
  { units: 20, logit: -2, run: 'a' },
  { units: 12, logit: -1.5, run: 'a' },
  { units: 30, logit: -2.4, run: 'b' },
];

describe('expectedClusteredCount', () => {
  it('is the binomial mean and variance where nothing is shared', () => {
    const { expected, variance } = expectedClusteredCount(batches, { shared: 0, run: 0, batch: 0 });
    const p = batches.map(({ logit }) => logistic(logit));
    expect(expected).toBeCloseTo(
      batches.reduce((sum, { units }, at) => sum + units * (p[at] ?? 0), 0),
      10,
    );
    expect(variance).toBeCloseTo(
      batches.reduce((sum, { units }, at) => sum + units * (p[at] ?? 0) * (1 - (p[at] ?? 0)), 0),
      10,
    );
  });

  it('agrees with a simulation of the model within 4 %', () => {
    const spread = { shared: 0.06, run: 0.12, batch: 0.1 };
    const { expected, variance } = expectedClusteredCount(batches, spread);
    const random = seededRandom(7);
    const counts = Array.from({ length: 40_000 }, () => {
      const shared = Math.sqrt(spread.shared) * random.normal();
      const run = new Map<string, number>();
      return batches.reduce((sum, { units, logit, run: name }) => {
        const effect = run.get(name) ?? Math.sqrt(spread.run) * random.normal();
        run.set(name, effect);
        const own = Math.sqrt(spread.batch) * random.normal();
        return sum + random.binomial(units, logistic(logit + shared + effect + own));
      }, 0);
    });
    const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length;
    const spreadSeen = counts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / (counts.length - 1);
    expect(mean / expected).toBeCloseTo(1, 1);
    expect(Math.abs(spreadSeen / variance - 1)).toBeLessThan(0.04);
  });

  it('agrees with a simulation where two levels cross each other and the runs', () => {
    const spread = { shared: 0.05, run: 0.1, batch: 0.05, crossed: [0.15, 0.1] };
    const rows = [
      { units: 20, logit: -2, run: 'a', crossed: ['lot 1', 'straw 1'] },
      { units: 12, logit: -1.5, run: 'a', crossed: ['lot 2', 'straw 1'] },
      { units: 30, logit: -2.4, run: 'b', crossed: ['lot 1', 'straw 2'] },
    ];
    const { variance } = expectedClusteredCount(rows, spread);
    const random = seededRandom(11);
    const counts = Array.from({ length: 40_000 }, () => {
      const effects = new Map<string, number>();
      const effectOf = (label: string, part: number) => {
        const known = effects.get(label) ?? Math.sqrt(part) * random.normal();
        effects.set(label, known);
        return known;
      };
      return rows.reduce((sum, { units, logit, run, crossed }) => {
        const lots = crossed.map((label, level) => effectOf(label, spread.crossed[level] ?? 0));
        const shared = effectOf('all', spread.shared) + effectOf(`run ${run}`, spread.run);
        const own = Math.sqrt(spread.batch) * random.normal();
        const all = lots.reduce((total, effect) => total + effect, logit + shared + own);
        return sum + random.binomial(units, logistic(all));
      }, 0);
    });
    const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length;
    const seen = counts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / (counts.length - 1);
    expect(Math.abs(seen / variance - 1)).toBeLessThan(0.05);
    expect(variance).toBeGreaterThan(expectedClusteredCount(rows, { ...spread, crossed: [0, 0] }).variance);
  });

  it('names a wrong argument', () => {
    const crossed = { shared: 0, run: 0, batch: 0, crossed: [0.1] };
    expect(() => expectedClusteredCount(batches, crossed)).toThrow(/crossed/);
    expect(() => expectedClusteredCount(batches, { shared: -1, run: 0, batch: 0 })).toThrow(/shared/);
    expect(() =>
      expectedClusteredCount([{ units: 1.5, logit: 0, run: 'a' }], { shared: 0, run: 0, batch: 0 }),
    ).toThrow(/units/);
  });
});

describe('marginalMoments', () => {
  it('has the mean of marginalProbability and no variance without random effects', () => {
    for (const [logit, variance] of [
      [-3, 0.5],
      [0, 1],
      [1, 0.2],
    ] as const)
      expect(marginalMoments(logit, variance).mean).toBeCloseTo(marginalProbability(logit, variance), 9);
    expect(marginalMoments(-2, 0).variance).toBeCloseTo(0, 15);
  });
});
