import { describe, expect, it } from 'vitest';
import { type CostedBatch, costGroup, missingParts } from '@/lib/analysis/costs/cost-group';

const batch = (site: string, minor: number, freshGrams: number, sold: number | null = null): CostedBatch => ({
  ...{ id: `${site}${minor}`, siteId: site, method: 'lime', run: `${site}${minor}`, freshGrams },
  cost: { kind: 'full', minor, labourMinutes: 60 },
  soldMinorPerKg: sold,
});

const four = [batch('a', 500, 1_000), batch('b', 700, 1_000), batch('c', 600, 1_500), batch('d', 900, 1_500)];

describe('the cost of a kilogram', () => {
  it('has limits around it from three independent groups on', () => {
    const { cost } = costGroup('lime', four, 'site');
    expect(cost).toMatchObject({ kind: 'figure', minorPerKg: 540, batches: 4, groups: 4 });
    if (cost.kind !== 'figure' || cost.interval.kind !== 'interval') throw new Error('no limits');
    expect(cost.interval.low).toBeGreaterThan(0);
    expect(cost.interval.low).toBeLessThan(540);
    expect(cost.interval.high).toBeGreaterThan(540);
    expect(costGroup('lime', four.slice(0, 2), 'site').cost).toMatchObject({
      interval: { kind: 'none', reason: 'too-few-sites' },
    });
  });

  it('mirrors the margin at a price that is the same everywhere: limits as wide, below nothing too', () => {
    const price = 300;
    const priced = four.map((one) => ({ ...one, soldMinorPerKg: price }));
    const { cost, margin } = costGroup('lime', priced, 'site');
    if (cost.kind !== 'figure' || margin.kind !== 'figure') throw new Error('no figure');
    if (cost.interval.kind !== 'interval' || margin.interval.kind !== 'interval')
      throw new Error('no limits');
    expect(margin.minorPerKg).toBeCloseTo(price - cost.minorPerKg, 9);
    expect(margin.interval.low).toBeCloseTo(price - cost.interval.high, 6);
    expect(margin.interval.high).toBeCloseTo(price - cost.interval.low, 6);
  });

  it('has a margin without limits where a group cost something and gave nothing', () => {
    const lost = [...four, batch('e', 400, 0)].map((one) => ({ ...one, soldMinorPerKg: 1_300 }));
    const { margin, cost } = costGroup('lime', lost, 'site');
    expect(cost).toMatchObject({ minorPerKg: 620, interval: { kind: 'interval' } });
    expect(margin).toMatchObject({ minorPerKg: 680, interval: { kind: 'none', reason: 'not-enough-data' } });
  });

  it('has no limit below nothing, however few and unlike the groups are', () => {
    const unlike = [batch('a', 100, 1_000), batch('b', 4_000, 1_000), batch('c', 200, 1_000)];
    const { cost } = costGroup('lime', unlike, 'site');
    if (cost.kind !== 'figure' || cost.interval.kind !== 'interval') throw new Error('no limits');
    expect(cost.interval.low).toBe(0);
    expect(cost.interval.high).toBeGreaterThan(cost.minorPerKg);
  });

  it('does not depend on the order of the batches', () => {
    expect(costGroup('lime', [...four].reverse(), 'site').cost).toEqual(costGroup('lime', four, 'site').cost);
  });
});

it('the part that most batches lack is named first', () => {
  const lacking = (...parts: ('water' | 'spawn')[]): CostedBatch => ({
    ...batch('a', 1, 1),
    cost: { kind: 'missing', parts },
  });
  expect(missingParts([lacking('water'), lacking('spawn', 'water'), ...four])).toEqual([
    { part: 'water', batches: 2 },
    { part: 'spawn', batches: 1 },
  ]);
});
